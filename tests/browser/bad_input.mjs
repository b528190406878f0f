// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// What a browser may refuse, and a file that is none: a sentence, a way on, and nothing lost. usage: bad_input.mjs ADDRESS
// DESK    DESK: the program halfcup-desk
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { App } from './app.mjs';
import { check, run } from './stage.mjs';

const [address, desk] = process.argv.slice(2);
const newerSchema = 9999;
const recordsPath = '/records/halfcup.db'; // below /kept

// In place of what is kept, a database of the native program that claims to be of a later form (SQLite's "user version":
// bytes 60 to 63 of the file, https://www.sqlite.org/fileformat.html).
async function putNewerRecords(stage) {
  const path = join(stage.folder, 'newer.db');
  const made = spawnSync(desk, ['demo', path], { encoding: 'utf8' });
  check(made.status === 0 && !existsSync(`${path}-wal`), `halfcup-desk demo: ${made.stdout}${made.stderr}`);
  const bytes = readFileSync(path);
  bytes.writeUInt32BE(newerSchema, 60);
  const page = await stage.newPage();
  // Without the worker, which would answer with the program whatever page is asked for.
  await page.goto(`${address}/worker.js`);
  await page.evaluate(
    ([records, base64]) =>
      new Promise((resolve, reject) => {
        const content = Uint8Array.from(atob(base64), (each) => each.charCodeAt(0));
        const asked = indexedDB.open('halfcup', 1);
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const transaction = asked.result.transaction(['files', 'blocks'], 'readwrite');
          const files = transaction.objectStore('files');
          const blocks = transaction.objectStore('blocks');
          for (const ending of ['-wal', '-shm']) files.delete(records + ending);
          files.get(records).onsuccess = ({ target: { result: record } }) => {
            files.put({ ...record, size: content.length }, records);
            blocks.delete(IDBKeyRange.bound([record.id, 0], [record.id, Infinity]));
            for (let at = 0; at < content.length; at += 4096) blocks.put(content.slice(at, at + 4096), [record.id, at / 4096]);
          };
          transaction.oncomplete = () => resolve(asked.result.close());
          transaction.onabort = () => reject(transaction.error);
        };
      }),
    [recordsPath, bytes.toString('base64')],
  );
  await page.close();
}

function schemaOfRecords(page) {
  return page.evaluate(
    (records) =>
      new Promise((resolve) => {
        indexedDB.open('halfcup', 1).onsuccess = ({ target: { result: database } }) => {
          const transaction = database.transaction(['files', 'blocks']);
          transaction.objectStore('files').get(records).onsuccess = ({ target: { result: record } }) =>
            (transaction.objectStore('blocks').get([record.id, 0]).onsuccess = ({ target: { result: bytes } }) => {
              database.close();
              resolve(new DataView(bytes.buffer, bytes.byteOffset).getUint32(60));
            });
        };
      }),
    recordsPath,
  );
}

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
  await app.press('Choose a file');
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

  // Records of a newer program, as when an older one was kept for a start without a network. There is no newer one on the
  // server either: it is told again, and nothing is lost.
  await stage.page.evaluate(async () => (await navigator.serviceWorker.ready).unregister());
  await stage.page.close();
  await putNewerRecords(stage);
  await stage.newPage();
  await stage.page.goto(address);
  await app.isRunning();
  await app.sees('the newer version comes by itself');
  await stage.picture('newer-records');
  const loaded = stage.page.waitForEvent('load');
  await app.press('Start again');
  await loaded;
  await app.isRunning();
  await app.sees('the newer version comes by itself');
  check((await schemaOfRecords(stage.page)) === newerSchema, 'the records of a newer program were changed');

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
  console.log('A second tab, no position, no room, no storage, no WebAssembly, newer records, a file that is none: passed.');
});
