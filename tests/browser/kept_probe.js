// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
'use strict';

let probe;
let hasFailed = false;

window.opened = (async () => {
  const keptStorage = await KeptStorage.open();
  probe = await probe_entry({ keptStorage, keptFailed: () => (hasFailed = true) });
  const code = probe._probeOpen();
  return { code, sound: probe._probeIsSound(), count: probe._probeCount(), last: probe._probeLast() };
})();

const turn = () => new Promise((resolve) => setTimeout(resolve));

// One row after another, as fast as they can be kept; now and then several before the storage has answered.
window.work = async () => {
  for (let number = probe._probeLast() + 1; ; ++number) {
    if (probe._probeAdd(number) !== 0) throw new Error('SQLite does not take a row');
    if (number % 3 === 0) {
      await turn();
      continue;
    }
    while (!probe._probeIsAllKept()) await turn();
    tellKept(number);
  }
};
