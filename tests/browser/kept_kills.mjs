// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// The tab is killed at random moments while rows are written: whatever was told as kept is there afterwards, in a sound
// database, with nothing missing in between. usage: kept_kills.mjs ADDRESS [KILLS] [SEED]
import { chances, check, run } from './stage.mjs';

const [address, kills = '100', seed = '1'] = process.argv.slice(2);

const chance = chances(Number(seed));

run(async (stage) => {
  let kept = 0; // the highest number that the page has told as kept
  let rows = 0;
  let mostUntold = 0;
  for (let kill = 0; kill <= Number(kills); ++kill) {
    const page = stage.page;
    await page.exposeFunction('tellKept', (number) => (kept = Math.max(kept, number)));
    await page.goto(`${address}/kept_probe.html`);
    const found = await page.evaluate(() => window.opened);
    check(found.code === 0, `SQLite cannot open the database: ${found.code}`);
    check(found.sound === 1, `the database is not sound after kill ${kill}`);
    check(found.last >= kept, `${kept} was told as kept, and ${found.last} is the last that is there`);
    check(found.count === found.last, `${found.count} rows are there of ${found.last}`);
    mostUntold = Math.max(mostUntold, found.last - kept);
    rows = found.last;
    if (kill === Number(kills)) break;
    page.evaluate(() => window.work()).catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, 20 + 400 * chance()));
    await stage.killTab();
    await stage.newPageAfterKill();
  }
  check(rows > Number(kills), `only ${rows} rows were written in ${kills} runs: the kills came too early to tell anything`);
  console.log(`${kills} kills, ${rows} rows, none lost that was told as kept; at most ${mostUntold} more were there than told.`);
});
