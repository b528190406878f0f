// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// No test, for the eye: the demo's yards gone through by touches as the native program's tour goes, and each picture laid
// beside the native one of the same name. usage: tour.mjs ADDRESS NATIVE FOLDER [WIDTHxHEIGHT]
//   NATIVE   what "halfcup --tour NATIVE" wrote     FOLDER   gets NAME.png, the two beside each other: native, browser
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { App } from './app.mjs';
import { run } from './stage.mjs';

const [address, native, folder, size = '360x740'] = process.argv.slice(2);
const [width, height] = size.split('x').map(Number);
const pictures = readdirSync(join(native, size)).sort();
mkdirSync(folder, { recursive: true });

async function layBeside(stage, name, browser) {
  const file = pictures.find((each) => each.replace(/^\d+-/, '') === `${name}.png`);
  const left = file ? readFileSync(join(native, size, file)).toString('base64') : '';
  const page = await stage.context.newPage();
  await page.setViewportSize({ width: 2 * width + 24, height });
  await page.setContent('<body style="margin: 0; display: flex; gap: 24px; background: #888"></body>');
  await page.evaluate(
    async (both) => {
      for (const each of both) {
        const image = new Image();
        image.src = `data:image/png;base64,${each}`;
        await image.decode().catch(() => {});
        document.body.append(image);
      }
    },
    [left, browser.toString('base64')],
  );
  await page.screenshot({ path: join(folder, file ?? `${name}.png`) });
  await page.close();
}

run(
  async (stage) => {
    const app = new App(stage);
    const look = async (name) => {
      await stage.page.waitForTimeout(400);
      await layBeside(stage, name, await stage.page.screenshot());
      await stage.page.bringToFront();
    };
    const seconds = (count) => stage.page.waitForTimeout(count * 1000);
    await app.start(`${address}/#demo`);
    await app.sees('You are here');
    await look('here');
    await app.press('Wash colony', { begins: true });
    await look('queen');
    await app.press('Queen seen and safe');
    await look('scoop');
    await app.press('Scooped');
    await look('pour');
    await app.press('Lid on: start the shake');
    await seconds(12);
    await look('shake');
    await seconds(24);
    await look('shake-past-half');
    await seconds(23);
    await look('shake-over');
    await app.press('Let it settle');
    await seconds(7);
    await look('settle');
    await seconds(23);
    await app.press('Count the mites');
    await look('count-start');
    await app.count(1, 9);
    await look('count');
    await app.press('Type it', { begins: true });
    await look('count-typed');
    await app.press('Back');
    await app.press('Done');
    await look('second-rinse');
    await app.press('Show the answer');
    await app.sees('on every 100 bees');
    await look('answer');
    await app.press('What to treat with');
    await look('treat');
    await app.press('What is so now');
    await look('situation');
    await app.press('Back');
    await app.press('Formic acid', { begins: true });
    await look('choice');
    await app.press('Record this treatment');
    await look('record');
    await stage.page.reload();
    await app.isThere();
    await app.press('Yards');
    await look('yards');
    await app.press('Back');
    await app.press('Season');
    await look('season');
    await app.press('Share'); // on the smallest glass it stands here alone
    await look('share');
  },
  { viewport: { width, height }, scale: 1, where: { latitude: 53.071, longitude: 19.642 } },
);
