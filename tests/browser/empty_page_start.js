// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// The shortest way from a page to a window of Qt Quick in it.
'use strict';

(() => {
  const compiled = WebAssembly.compileStreaming(fetch(document.currentScript.dataset.program));
  empty_page_entry({
    qtContainerElements: [document.getElementById('glass')],
    instantiateWasm: (imports, done) => {
      compiled.then(async (module) => done(await WebAssembly.instantiate(module, imports), module));
    },
  });
})();
