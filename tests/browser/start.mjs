// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// No test, it measures: how long a start takes beside that of an empty page of Qt Quick, and what goes over the wire at the
// first visit and at later ones. usage: start.mjs ADDRESS EMPTY [RUNS]    EMPTY: address of the empty page
import { readFileSync, truncateSync } from 'node:fs';
import { App } from './app.mjs';
import { run } from './stage.mjs';

const [address, empty, runs = '11'] = process.argv.slice(2);

// When the page is asked for, to the first picture on its canvas: of a graphics card's kind or of plain points.
const watch = () => {
  const seen = () => (globalThis.firstPictureMs ??= performance.now());
  for (const [kind, calls] of [
    [globalThis.WebGLRenderingContext, ['drawElements', 'drawArrays', 'clear']],
    [globalThis.WebGL2RenderingContext, ['drawElements', 'drawArrays', 'clear']],
    [globalThis.CanvasRenderingContext2D, ['putImageData', 'drawImage']],
  ])
    for (const call of calls) {
      const real = kind.prototype[call];
      kind.prototype[call] = function (...told) {
        seen();
        return real.apply(this, told);
      };
    }
};

const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const sent = () =>
  readFileSync(process.env.HALFCUP_SENT, { encoding: 'utf8', flag: 'a+' })
    .split('\n')
    .reduce((sum, line) => sum + Number(line.split(' ')[0]), 0);

async function firstPicture(stage, where) {
  const page = await stage.context.newPage();
  await page.goto(where);
  await page.waitForFunction(() => globalThis.firstPictureMs, undefined, { polling: 50 });
  const ms = await page.evaluate(() => globalThis.firstPictureMs);
  await page.waitForTimeout(1500); // what goes on after it is nothing the next one should wait for
  await page.close();
  return ms;
}

run(async (stage) => {
  await stage.context.addInitScript(watch);
  const app = new App(stage);
  await stage.newPage();
  await app.start(address);
  await app.press('Understood, go on');
  await stage.page.evaluate(() => navigator.serviceWorker.ready);
  await stage.page.waitForTimeout(3000);
  await stage.page.close();
  console.log(`First visit: ${sent()} bytes over the wire, packed.`);
  for (const where of [address, empty]) for (let i = 0; i < 2; ++i) await firstPicture(stage, where);
  truncateSync(process.env.HALFCUP_SENT);
  const ours = [];
  const floor = [];
  for (let i = 0; i < Number(runs); ++i) {
    floor.push(await firstPicture(stage, empty));
    ours.push(await firstPicture(stage, address));
  }
  console.log(`${runs} later visits: ${sent()} bytes over the wire.`);
  const told = (values) => `${median(values).toFixed(0)} ms (${Math.min(...values).toFixed(0)} to ${Math.max(...values).toFixed(0)})`;
  console.log(`Start to the first picture, medians of ${runs}: ${told(ours)}; an empty page ${told(floor)}; ratio ${(median(ours) / median(floor)).toFixed(2)}.`);
});
