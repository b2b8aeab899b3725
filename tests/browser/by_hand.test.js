// Three readings placed on the picture by hand, with keys and by touching it; the lesson may want that before anything draws.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

const row = (point) => `#by-hand-rows [data-point="${point}"]`;
const said = (page) =>
  page.run(() => [...document.querySelectorAll('#by-hand-rows [data-part="said"]')].map((one) => (one.checkVisibility() ? one.innerText : "")));

test("three readings are placed by key and by touch, and then the rest draws", { timeout: 180_000 }, async () => {
  const page = await browser.open();
  const waiting = JSON.parse(steps.LESSON_OF_GROUPS);
  await steps.paste(page, JSON.stringify({ ...waiting, open: { ...waiting.open, curve_waits: true } }));
  await page.push("#lesson-take");
  // 14 °C at the top, a degree less at each metre.
  const rows = Array.from({ length: 10 }, (_, z) => `${z}\t${14 - z}.0\n`).join("");
  await steps.paste(page, `Depth (m)\tGoing down\n${rows}`);
  await page.until(() => document.getElementById("log-main").checkVisibility());
  await steps.go(page, "profile");
  await page.sees("#profile-panel", "First place three of your readings");
  await page.push('#profile-panel [data-view="waiting"] [data-part="to-log"]');
  await page.push("#log-profile");
  await page.until(() => document.getElementById("log-by_hand").checkVisibility());
  // The first, 13 °C at 1 m: from the middle (4.5 m, 9.5 °C) by seven keys up and seven to the right.
  await page.tab_to(row(0));
  for (let key = 0; key < 7; key += 1) await page.press("ArrowUp", "ArrowRight");
  assert.match(await page.run((at) => document.querySelector(at).ariaLabel, row(0)), /lies at 13\.0\s°C and 1\.0\sm/);
  // The second, 10 °C at 4 m, too deep.
  await page.tab_to(row(1));
  for (let key = 0; key < 5; key += 1) await page.press("ArrowDown");
  assert.equal(await page.run(() => document.getElementById("by-hand-check").ariaDisabled), "true");
  // The third where the first lies: 7 °C at 7 m is neither.
  await page.tab_to(row(2));
  const picture = await page.run(() => {
    const { left, top, width, height } = document.getElementById("log-picture").getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 4 };
  });
  await page.inner.mouse.click(picture.x, picture.y);
  await page.push("#by-hand-check");
  const [first, second, third] = await said(page);
  assert.equal(first, "Right.");
  assert.match(second, /The right temperature. Its depth is 4\.0\sm/);
  assert.match(third, /Count 7\.0\sm down from 0/);
  assert.match(await page.focused(), /at 4\.0\sm/, "the focus goes to the first that is not right");
  await page.push("#by-hand-draw");
  await steps.go(page, "profile");
  await page.until(() => document.querySelector('#profile-panel [data-part="marks"]')?.checkVisibility());
  assert.deepEqual(page.faults, []);
  await page.close();
});
