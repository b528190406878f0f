// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// A keeper's first day with the page: a yard made where the phone is, a wash, the tab killed at the seventh mite, no network
// from the second start on, a new version of the program in between, the records handed to a native phone and back.
// usage: wash.mjs ADDRESS DESK    DESK: the program halfcup-desk
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { App } from './app.mjs';
import { check, run } from './stage.mjs';

const [address, desk] = process.argv.slice(2);

function native(...told) {
  const done = spawnSync(desk, told, { encoding: 'utf8' });
  check(done.status === 0, `halfcup-desk ${told.join(' ')}: ${done.stdout}${done.stderr}`);
  return done.stdout;
}

// As if a new version had been put onto the server: another page, and a worker that has another list.
function putNewVersion() {
  for (const [name, from, to] of [
    ['index.html', '</body>', '<!-- the second version --></body>'],
    ['worker.js', /'halfcup-[0-9a-f]+'/, "'halfcup-second'"],
  ]) {
    const path = join(process.env.HALFCUP_SITE, name);
    const text = readFileSync(path, 'utf8');
    check(text.replace(from, to) !== text, `there is no ${from} in ${name}`);
    writeFileSync(path, text.replace(from, to));
    rmSync(`${path}.br`, { force: true });
  }
}

const isSecond = (page) => page.evaluate(() => document.documentElement.innerHTML.includes('the second version'));

run(async (stage) => {
  const app = new App(stage);
  await app.start(address);
  await app.press('Understood, go on');
  await app.sees('Position known within');
  await app.press('Make a yard here');
  await app.write('Name of the yard', 'Behind the mill');
  await app.press('Keep this yard');
  await app.write('Add colonies', '4, 7');
  await app.press('Add');
  await app.press('Done');

  await app.toTheCount('Wash colony 4');
  await app.count(1, 4);
  putNewVersion();
  await stage.page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await app.until(() => stage.page.evaluate(async () => !!(await navigator.serviceWorker.ready).waiting), 'the new version, waiting');
  await app.count(5, 7);
  check(!(await isSecond(stage.page)), 'the new version came in the middle of a wash');
  await stage.killTab();
  await stage.newPageAfterKill();
  await app.start(address);
  await app.counted(7);
  await app.count(8, 9);
  await app.toTheAnswer();
  await app.sees('Over your line');
  await app.sees('9 mites in half a cup');
  await app.press('Back');

  // The browser is started anew in a yard without a network: the page comes from its own worker.
  await stage.page.evaluate(() => navigator.serviceWorker.ready);
  await stage.context.close();
  await stage.open();
  await stage.context.setOffline(true);
  stage.asked.length = 0;
  await app.start(address);
  check(await isSecond(stage.page), 'the new version did not come with a new start');
  await app.sees('You are here');
  await app.press('Colony 7', { begins: true });
  await app.toTheCount('Wash this colony');
  await app.count(1, 1);
  await app.toTheAnswer();
  await app.press('Done');
  await stage.context.setOffline(false);

  // To a native phone, which reads it.
  await app.press('Share');
  const download = stage.page.waitForEvent('download');
  await app.press('Write everything for another phone');
  const file = join(stage.folder, (await download).suggestedFilename());
  await (await download).saveAs(file);
  check(file.endsWith('.halfcup'), `the file is named ${file}`);
  const records = join(stage.folder, 'native.db');
  native('demo', records);
  const merged = native('merge', records, file);
  check(merged.includes('sample,new,2'), merged);

  // And back: the demo's yards, which that phone had.
  const back = join(stage.folder, 'back.halfcup');
  native('export', '--as', 'exchange', records, back);
  const chooser = stage.page.waitForEvent('filechooser');
  await app.press('Take in a file', { begins: true });
  await app.press('Choose a file');
  await (await chooser).setFiles(back);
  await app.press('Take it in');
  await app.press('Done');
  await app.press('Yards');
  await app.sees('Alder Bend');
  check(stage.asked.every((each) => each.startsWith(address) || each.startsWith('blob:')), `asked of others: ${stage.asked.join(' ')}`);
  console.log('A wash, a killed tab, a new version, no network, a file to a native phone and one back: passed.');
});
