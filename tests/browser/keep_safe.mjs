// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// A browser throws away what it kept: the reminder, a backup that leaves the page, a native phone that reads it, and the same
// file put back into a browser that knows nothing any more. usage: keep_safe.mjs ADDRESS DESK    DESK: halfcup-desk
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { App } from './app.mjs';
import { check, run } from './stage.mjs';

const [address, desk] = process.argv.slice(2);

async function choose(stage, app, button, file) {
  const chooser = stage.page.waitForEvent('filechooser');
  await app.press(button);
  await (await chooser).setFiles(file);
}

run(async (stage) => {
  const app = new App(stage);
  await app.start(address);
  await app.press('Understood, go on');
  await app.press('Make a yard here');
  await app.write('Name of the yard', 'Behind the mill');
  await app.press('Keep this yard');
  await app.write('Add colonies', '4');
  await app.press('Add');
  await app.press('Done');
  await app.toTheCount('Wash colony 4');
  await app.count(1, 3);
  await app.toTheAnswer();
  await app.press('Done');
  await app.press('Season');
  await app.press('1 wash in no backup yet', { begins: true });
  await app.sees('A browser may throw away what it keeps');
  await stage.picture('keep-safe');
  const download = stage.page.waitForEvent('download');
  await app.press('Make a backup', { begins: true });
  const name = (await download).suggestedFilename();
  const file = join(stage.folder, name);
  await (await download).saveAs(file);
  await app.sees(`${name}, handed to the browser`);
  await stage.picture('keep-safe-made');
  check(!(await app.text()).includes('/kept'), 'a folder is named that no keeper can open');
  const told = spawnSync(desk, ['check', file], { encoding: 'utf8' });
  check(told.status === 0 && told.stdout.includes('kind,backup') && /^rows sample,1\r?$/m.test(told.stdout), `halfcup-desk check: ${told.stdout}${told.stderr}`);

  // All is gone, as in a browser that needed the room: the records, and the program with them.
  await stage.page.close();
  await stage.newPage();
  const session = await stage.context.newCDPSession(stage.page);
  await session.send('Storage.clearDataForOrigin', { origin: address, storageTypes: 'all' });
  await app.start(address);
  await app.press('Understood, go on');
  check(!(await app.text()).includes('Behind the mill'), 'the records are still there');
  await app.press('Share');
  await app.press('Keep safe', { begins: true });
  await choose(stage, app, 'Choose one that lies elsewhere', file);
  await app.sees('Every row was checked');
  await app.press('Put this one back');
  await app.press('Put it back');
  await app.sees('was put back');
  await stage.picture('put-back');
  await app.press('Understood');
  await app.sees('Behind the mill');
  await stage.page.reload(); // and it stays
  await app.isThere();
  await app.sees('Behind the mill');
  console.log('Reminded, a backup out of the browser, read by the native program, put back after all was gone: passed.');
});
