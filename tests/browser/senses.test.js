// The profile for the ear and the fingers: a sound that sinks with the cursor and can be stopped, and a page to be raised.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

async function at_the_table() {
  const page = await browser.apart();
  page.hurry = true;
  await page.go();
  await steps.open_example(page, "layered-summer");
  await steps.to_profile(page);
  await page.push('#profile-panel .marking [data-part="to-table"]');
  return page;
}

test("the profile is heard from the top down, and the same button stops it", { timeout: 60_000 }, async () => {
  const page = await at_the_table();
  // What is told to the oscillator: the pitch at each reading.
  await page.run(() => {
    window.told = [];
    for (const way of ["setValueAtTime", "exponentialRampToValueAtTime"]) {
      const real = AudioParam.prototype[way];
      AudioParam.prototype[way] = function (value, at) {
        window.told.push([value, at]);
        return real.call(this, value, at);
      };
    }
  });
  const hear = '#profile-panel [data-part="hear"]';
  await page.push(hear);
  await page.sees(hear, "Stop");
  const { told, depths } = await page.run(() => ({
    told: window.told,
    depths: document.querySelectorAll('#profile-panel .readings tbody tr').length,
  }));
  assert.equal(told.length, depths);
  // 23.45 °C at the top, a semitone a degree over 220 Hz at 0 °C.
  assert.ok(Math.abs(told[0][0] - 220 * 2 ** (23.45 / 12)) < 0.1, String(told[0][0]));
  assert.ok(told.at(-1)[0] < told[0][0] && told.every(([, at], n) => n === 0 || at > told[n - 1][1]));
  // The cursor sinks with it.
  await page.until(() => document.querySelector("#profile-panel .readings tbody tr:nth-child(3).on") !== null);
  await page.push(hear);
  await page.sees(hear, "Hear it");
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("the page to be raised is saved with thick lines and braille", { timeout: 60_000 }, async () => {
  const page = await at_the_table();
  await page.keep_saved();
  await page.push('#profile-panel [data-part="touch"]');
  const saved = await page.until(() => window.saved);
  assert.match(saved, /width="210mm" height="297mm"/);
  assert.match(saved, /stroke-width="2.6"/);
  // "0" to "9" metres and the temperatures: each number has its sign of four dots and one to four dots a figure.
  assert.ok(saved.match(/<circle/g).length > 60);
  assert.deepEqual(page.faults, []);
  await page.close();
});
