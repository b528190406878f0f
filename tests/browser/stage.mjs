// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Debian's Chromium with a profile of its own, as a phone: for tests of the browser's program.
import { createRequire } from 'node:module';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const require = createRequire(`${process.env.HALFCUP_PLAYWRIGHT}/package.json`);
const { chromium } = require('playwright-core');

// Without these a browser asks its maker's servers for this and that, and warns of a graphics card it has not.
const flags = ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update',
  '--disable-sync', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'];

export function check(truth, sentence) {
  if (!truth) throw new Error(sentence);
}

// Numbers from 0 to 1 that can be had again: Park and Miller, "Random number generators: good ones are hard to find",
// Communications of the ACM 31 (1988).
export function chances(seed) {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

// What a dead page is asked may be answered never.
export function within(ms, answer) {
  return Promise.race([answer, pause(ms).then(() => Promise.reject(new Error(`no answer within ${ms} ms`)))]);
}

export class Stage {
  folder = mkdtempSync(join(tmpdir(), 'halfcup-browser-'));
  asked = []; // every address that the page asked for
  warnings = [];

  // viewport: of the glass, in CSS pixels; scale: the phone's own pixels in one of those; where: of the phone.
  constructor({ viewport = { width: 360, height: 740 }, scale = 2, where = { latitude: 47.5, longitude: 11.25 } } = {}) {
    Object.assign(this, { viewport, scale, where });
  }

  async open() {
    this.context = await chromium.launchPersistentContext(this.folder, {
      executablePath: process.env.HALFCUP_CHROMIUM ?? '/usr/bin/chromium', headless: true, args: flags, viewport: this.viewport,
      deviceScaleFactor: this.scale, isMobile: true, hasTouch: true, locale: 'en-GB', timezoneId: 'UTC', permissions: ['geolocation'],
      geolocation: { ...this.where, accuracy: 8 }, acceptDownloads: true });
    this.context.setDefaultTimeout(60_000);
    this.context.on('request', (request) => this.asked.push(request.url()));
    await this.newPage();
  }

  async newPage() {
    this.page = await this.context.newPage();
    this.page.on('console', (message) => {
      if (['warning', 'error'].includes(message.type())) this.warnings.push(message.text());
    });
    this.page.on('pageerror', (error) => this.warnings.push(String(error)));
    return this.page;
  }

  // As a phone does that runs out of memory: the tab's process is gone without a word, the browser goes on.
  async killTab() {
    const browser = await this.context.browser()?.newBrowserCDPSession();
    const session = browser ?? (await this.context.newCDPSession(this.page));
    const { processInfo } = await session.send('SystemInfo.getProcessInfo').catch(() => ({ processInfo: [] }));
    const renderers = processInfo.filter((each) => each.type === 'renderer');
    const crashed = this.page.waitForEvent('crash');
    // The page's, the worker's, and one that is kept ready for the next page: which is which is not told.
    if (renderers.length) for (const each of renderers) process.kill(each.id, 'SIGKILL');
    else session.send('Page.crash').catch(() => {});
    await crashed;
    await this.page.close();
  }

  // The browser may not know yet that the process it kept ready was killed too, and give the next page that one.
  async newPageAfterKill() {
    await pause(300);
    for (let more = 3; ; --more)
      try {
        await this.newPage();
        return await within(10_000, this.page.evaluate(() => true));
      } catch (error) {
        if (!more) throw error;
      }
  }

  // Into the folder HALFCUP_PICTURES, where that is set.
  async picture(name) {
    const folder = process.env.HALFCUP_PICTURES;
    if (folder) await this.page.screenshot({ path: join(folder, `${name}.png`) });
  }

  async close() {
    await this.context?.close();
    rmSync(this.folder, { recursive: true, force: true });
  }
}

// Runs a journey and ends the process: 0 passed, 1 failed.
export async function run(journey, options) {
  const stage = new Stage(options);
  let code = 0;
  try {
    await stage.open();
    await journey(stage);
  } catch (error) {
    code = 1;
    console.log(`Failed: ${error.stack ?? error}`);
    await stage.picture('where-it-failed').catch(() => {});
    if (stage.warnings.length) console.log(`The browser said:\n${stage.warnings.slice(-10).join('\n')}`);
  }
  await stage.close().catch(() => {});
  process.exit(code);
}
