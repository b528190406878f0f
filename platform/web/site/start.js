// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Loads the program, shows how far that is, and says what is wrong where it cannot run.
'use strict';

(() => {
  const settings = document.currentScript.dataset;
  const language = navigator.languages.map((each) => each.slice(0, 2)).find((each) => each in halfcupWords) ?? 'en';
  const words = halfcupWords[language];
  const element = (id) => document.getElementById(id);
  let hasTrouble = false;

  function say(sentence) {
    if (!hasTrouble) element('what').textContent = sentence;
  }

  // One sentence and a way on. The first trouble is the one that counts: others may follow from it.
  function trouble(sentence, error) {
    if (error) console.warn(error);
    if (hasTrouble) return;
    say(sentence);
    hasTrouble = true;
    element('progress').hidden = true;
    element('size').hidden = true;
    element('again').hidden = false;
    element('start').hidden = false;
    element('start').setAttribute('role', 'alert');
  }

  class Trouble extends Error {
    constructor(sentence, cause) {
      super(sentence, { cause });
    }
  }

  // Held as long as this page lives; the browser lets go of it when the page is gone, killed or not.
  function holdRecords() {
    return new Promise((resolve, reject) => {
      navigator.locks
        .request('halfcup-records', { ifAvailable: true }, (lock) => {
          if (!lock) return reject(new Trouble(words.otherTab));
          resolve();
          return new Promise(() => {});
        })
        .catch((error) => reject(new Trouble(words.noStorage, error)));
    });
  }

  async function loadModule() {
    let response;
    try {
      response = await fetch(settings.program);
    } catch (error) {
      throw new Trouble(words.noNetwork, error);
    }
    if (!response.ok) throw new Trouble(words.noNetwork, new Error(`${settings.program}: ${response.status}`));
    // From the worker it comes as soon as asked for, and the browser may keep what it compiled of it: of the very response only.
    if (navigator.serviceWorker?.controller) return compiled(response);
    let loaded = 0;
    const counted = response.body.pipeThrough(
      new TransformStream({
        transform(bytes, controller) {
          loaded += bytes.length;
          element('progress').value = loaded / settings.programBytes;
          controller.enqueue(bytes);
        },
      }),
    );
    return compiled(new Response(counted, { headers: { 'Content-Type': 'application/wasm' } }));
  }

  async function compiled(response) {
    try {
      return await WebAssembly.compileStreaming(response);
    } catch (error) {
      // A download that breaks off ends in the same place as a phone without memory for it.
      throw new Trouble(error instanceof RangeError ? words.noMemory : words.noNetwork, error);
    }
  }

  async function start() {
    document.documentElement.lang = language;
    element('again').textContent = words.again;
    element('again').addEventListener('click', () => location.reload());
    element('size').textContent = words.size.replace('%1', (settings.wireBytes / 1e6).toLocaleString(language, { maximumFractionDigits: 1 }));
    say(words.loading);
    if (typeof WebAssembly !== 'object' || !WebAssembly.compileStreaming) throw new Trouble(words.noWebAssembly);
    if (!globalThis.indexedDB || !navigator.locks) throw new Trouble(words.noStorage);
    await holdRecords();
    const storage = KeptStorage.open().catch((error) => {
      throw new Trouble(words.noStorage, error);
    });
    const [module, keptStorage] = await Promise.all([loadModule(), storage]);
    say(words.opening);
    // A browser may clear storage it was not asked to keep; it decides by itself, or asks the keeper.
    navigator.storage?.persist?.().catch(() => {});
    await run(module, keptStorage);
    element('start').hidden = true;
  }

  async function run(module, keptStorage) {
    const program = await halfcup_entry({
      keptStorage,
      keptFailed: (error) => trouble(words.storageFull, error),
      qtContainerElements: [element('glass')],
      noInitialRun: true,
      instantiateWasm: (imports, done) => {
        WebAssembly.instantiate(module, imports).then(
          (instance) => done(instance, module),
          (error) => trouble(words.noMemory, error),
        );
      },
      preRun: [
        (instance) => {
          instance.ENV.LANG = `${navigator.language.replace('-', '_')}.UTF-8`;
        },
      ],
      onAbort: (reason) => trouble(/memory|OOM/i.test(String(reason)) ? words.noMemory : words.crashed, reason),
    });
    globalThis.halfcupProgram = program; // by which a test finds out what is on the glass
    try {
      program.callMain(location.hash === '#demo' ? ['--demo'] : []); // invented yards, with records of their own
    } catch (error) {
      if (error !== 'unwind') throw error; // so ends main() in a browser: the event loop goes on
    }
  }

  addEventListener('error', ({ error }) => {
    if (error instanceof WebAssembly.RuntimeError || error instanceof RangeError)
      trouble(error instanceof RangeError ? words.noMemory : words.crashed, error);
  });
  start().catch((error) => trouble(error instanceof Trouble ? error.message : words.crashed, error));
  navigator.serviceWorker?.register('worker.js').catch((error) => console.warn(error));
})();
