// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// The program in the page, used as a finger uses it: what is touched is found by the name that a screen reader is told, and
// touched in its middle.
import { check, within } from './stage.mjs';

const patienceMs = 30_000;
const betweenLooksMs = 60;
const fingerMs = 150; // no finger touches the same point again sooner, and the program takes it for a drop on the glass

const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

export class App {
  constructor(stage) {
    this.stage = stage;
  }

  // Goes to the address and waits for the program's first page.
  async start(address) {
    this.address = address;
    await this.stage.page.goto(address);
    await this.isThere();
  }

  // The program runs; what it shows may be a trouble.
  isRunning() {
    return this.stage.page.waitForFunction(() => document.getElementById('start').hidden, undefined, { timeout: 120_000 });
  }

  async isThere() {
    await this.isRunning();
    await this.until(async () => (await this.items()).length > 3, 'a first page');
  }

  async items() {
    const asked = this.stage.page.evaluate(() => halfcupProgram.UTF8ToString(halfcupProgram._halfcupToldItems()));
    return JSON.parse(await within(patienceMs, asked));
  }

  async text() {
    return (await this.items()).map((item) => item.name).join('\n');
  }

  async until(wanted, what, withinMs = patienceMs) {
    const end = Date.now() + withinMs;
    for (;;) {
      const found = await wanted();
      if (found) return found;
      check(Date.now() < end, `${what} did not come. On the page is:\n${await this.text()}`);
      await pause(betweenLooksMs);
    }
  }

  sees(words, withinMs) {
    return this.until(async () => (await this.text()).includes(words), `"${words}"`, withinMs);
  }

  // The one item of that name (or that begins so) that can be pressed.
  find(name, { begins = false, roles = ['Button', 'RadioButton', 'CheckBox'] } = {}) {
    return this.until(async () => {
      const found = (await this.items()).filter(
        (item) => roles.includes(item.role) && (begins ? item.name.startsWith(name) : item.name === name),
      );
      check(found.length < 2 || begins, `there are ${found.length} of "${name}"`);
      return found[0];
    }, `"${name}"`);
  }

  async press(name, how) {
    const item = await this.intoSight(await this.settled(name, how), name, how);
    check(item.enabled, `"${name}" cannot be pressed now`);
    await this.tap(item);
  }

  // Where it stays: a page comes in from the side, and a list goes on after the finger.
  async settled(name, how) {
    for (let before = await this.find(name, how); ; ) {
      await pause(80);
      const now = await this.find(name, how);
      if (now.x === before.x && now.y === before.y) return now;
      before = now;
    }
  }

  tap(item) {
    return this.stage.page.touchscreen.tap(item.x + item.width / 2, item.y + item.height / 2);
  }

  // What lies below the glass, or where the buttons at its foot are, is dragged up with a finger, as far as it moves.
  async intoSight(item, name, how) {
    while (await this.mayBeHidden(item)) {
      const { height } = this.stage.page.viewportSize();
      await this.drag(height * 0.5, height * 0.25);
      await pause(400); // at its end a list swings back, and a touch would only hold it
      const moved = await this.settled(name, how);
      if (moved.y === item.y) break;
      item = moved;
    }
    return item;
  }

  async mayBeHidden(item) {
    const { height } = this.stage.page.viewportSize();
    const bottom = item.y + item.height;
    const hintHeight = 60; // of the words that more is below
    const isInTheWay = (other) => {
      if (other.role !== 'Button' || other.name === item.name || other.y < height * 0.6) return false;
      const isBeside = other.x >= item.x + item.width || item.x >= other.x + other.width;
      return !isBeside && bottom > other.y - hintHeight;
    };
    return bottom > height || (item.y < height * 0.95 && (await this.items()).some(isInTheWay));
  }

  async drag(fromY, toY) {
    const session = await this.stage.context.newCDPSession(this.stage.page);
    const send = (type, y) => session.send('Input.dispatchTouchEvent', { type, touchPoints: y === null ? [] : [{ x: 120, y }] });
    await send('touchStart', fromY);
    for (let step = 1; step <= 8; ++step) {
      await send('touchMove', fromY + ((toY - fromY) * step) / 8);
      await pause(20);
    }
    await pause(200); // held still, so that it does not fly on
    await send('touchEnd', null);
    await session.detach();
  }

  async write(field, words) {
    await this.press(field, { roles: ['EditableText'] });
    await this.stage.page.keyboard.type(words, { delay: 15 });
    await this.until(async () => (await this.items()).some((item) => item.name === field && item.value === words), `"${words}" in "${field}"`);
  }

  // The parts of a wash, each with the words a keeper reads.

  async toTheCount(first, how) {
    await this.press(first, how);
    await this.press('Queen seen and safe');
    await this.press('Scooped');
    await this.press('Lid on: start the shake');
    await this.press('Stop here');
    await this.press('Count the mites');
    await this.find('Count one mite');
  }

  async count(first, last) {
    for (let mites = first; mites <= last; ++mites) {
      await this.tap(await this.find('Count one mite')); // nothing is dragged there: that would be a touch, and so a mite
      await this.counted(mites);
      await pause(fingerMs);
    }
  }

  counted(mites) {
    const words = mites === 1 ? '1 mite' : `${mites} mites`;
    return this.until(async () => (await this.items()).some((item) => item.name === words), `"${words}"`);
  }

  async toTheAnswer() {
    await this.press('Done');
    await this.press('Show the answer');
    await this.sees('on every 100 bees');
  }
}
