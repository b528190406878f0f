// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Mites are counted by touches and the tab is killed at random moments: the figure that was last on the glass is there when
// the page is opened again, or one more (a touch that was not shown yet). usage: app_kills.mjs ADDRESS [KILLS] [SEED]
import { App } from './app.mjs';
import { chances, check, run } from './stage.mjs';

const [address, kills = '100', seed = '1'] = process.argv.slice(2);
const chance = chances(Number(seed));

run(async (stage) => {
  const app = new App(stage);
  await app.start(address);
  await app.press('Understood, go on');
  await app.press('Load the demo');
  await app.press('Long Furrow', { begins: true });
  await app.toTheCount('Wash colony', { begins: true });
  let shown = 0;
  let more = 0;
  let touches = 0;
  for (let kill = 1; kill <= Number(kills); ++kill) {
    const face = await app.find('Count one mite');
    const dies = new Promise((resolve) => setTimeout(resolve, 100 + 1400 * chance())).then(() => stage.killTab());
    const isDead = dies.then(() => true);
    // The last figure that a keeper could have read before the page died.
    const touch = async () => {
      await app.tap(face);
      ++touches;
      await new Promise((resolve) => setTimeout(resolve, 60));
      shown = Math.max(shown, await figure(app));
      return false;
    };
    // A touch on a page that has died may be answered never, or with an error.
    while (!(await Promise.race([isDead, touch().catch(() => isDead)])));
    await stage.newPageAfterKill();
    await app.start(address);
    await app.find('Count one mite');
    const there = await figure(app);
    check(there >= shown, `${shown} mites were shown, and after kill ${kill} there are ${there}`);
    more += there - shown;
    shown = there;
    if (kill % 10 === 0) console.log(`${kill} kills, ${shown} mites`);
  }
  check(shown > Number(kills), `only ${shown} mites in ${kills} runs: the kills came too early to tell anything`);
  console.log(`${kills} kills, ${touches} touches, ${shown} mites kept, none lost that was shown; ${more} more were there than shown.`);
});

async function figure(app) {
  const found = (await app.items()).map((item) => /^(\d+) mites?$/.exec(item.name)).find((match) => match);
  return found ? Number(found[1]) : 0;
}
