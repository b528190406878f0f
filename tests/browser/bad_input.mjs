// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// What a browser may refuse, and a file that is none: a sentence, a way on, and nothing lost. usage: bad_input.mjs ADDRESS
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { App } from './app.mjs';
import { check, run } from './stage.mjs';

const [address] = process.argv.slice(2);

// The start page's own words, and its one button.
async function refused(page, words) {
  await page.waitForFunction((wanted) => document.getElementById('what').textContent.includes(wanted), words, { timeout: 60_000 });
  check(await page.locator('#again').isVisible(), `there is no way on beside "${words}"`);
  check((await page.locator('#start').getAttribute('role')) === 'alert', 'a screen reader is not told');
}

run(async (stage) => {
  // No position.
  await stage.context.clearPermissions();
  const app = new App(stage);
  await app.start(address);
  await app.press('Understood, go on');
  await app.sees('No position');
  await app.press('Make a yard here');
  await app.write('Name of the yard', 'Behind the mill');
  await app.press('Keep this yard');
  await app.sees('Add colonies');
  await app.press('Done');

  // A second tab: the first goes on.
  const second = await stage.context.newPage();
  await second.goto(address);
  await refused(second, 'open in another tab');
  await second.close();
  await app.sees('Behind the mill');

  // A file that is none.
  const file = join(stage.folder, 'shopping.halfcup');
  writeFileSync(file, 'honey, bread\n');
  await app.press('Share');
  await app.press('Take in a file', { begins: true });
  const chooser = stage.page.waitForEvent('filechooser');
  await app.press('Choose another file');
  await (await chooser).setFiles(file);
  await app.sees('is not a file that Halfcup wrote');
  await app.press('Back');
  await app.press('Back');

  // No more room, as the storage says it: what was done before is there after the next start.
  await stage.page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await app.press('Setup');
  await app.press('Light: Dusk');
  await refused(stage.page, 'storage is full');
  await stage.page.reload();
  await app.isThere();
  await app.sees('Behind the mill');

  // No storage at all.
  const poor = await stage.context.newPage();
  await poor.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
  await stage.page.close();
  await poor.goto(address);
  await refused(poor, 'no storage');

  // No WebAssembly.
  const old = await stage.context.newPage();
  await old.addInitScript(() => Object.defineProperty(globalThis, 'WebAssembly', { value: undefined }));
  await old.goto(address);
  await refused(old, 'too old');
  console.log('A second tab, no position, no room, no storage, no WebAssembly, a file that is none: passed.');
});
