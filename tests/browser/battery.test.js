// The browser's process is killed in the middle of typing, as by a flat battery, again and again on one profile. A key takes
// some milliseconds from the page to the process that owns the disk, and no page can shorten that: the kill comes a little
// later than that, and always well before the whole notebook is written (300 ms after the last key).

import assert from "node:assert/strict";
import { test } from "node:test";
import { setTimeout as pause } from "node:timers/promises";
import { drop_profile, new_profile, start } from "./browser.js";
import * as steps from "./steps.js";

/** A few rounds each time; `KILLS=50` asks for as many as a term of flat batteries. */
const ROUNDS = Number(process.env.KILLS ?? 12);

/** Fixed, so that a failure can be had again. */
let seed = 20_261;
function up_to(most) {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed % most;
}

/** Milliseconds from the last key to the kill. */
const SOONEST_MS = 50;
const WITHIN_MS = 100;

const SOUNDS = ["we ", "took ", "the ", "mean ", "of ", "both, ", "3,5 ", "to ", "4.0 m ", "ñ é ", "<b> ", "\"=1+1\" "];

test(`killed ${ROUNDS} times in mid-typing, nothing is lost`, { timeout: 1_200_000 }, async (t) => {
  const profile = new_profile();
  t.after(() => drop_profile(profile));
  let browser = await start({ profile });
  let page = await browser.open();
  await page.run(() => document.querySelector('[data-example="layered-summer"]').click());
  await page.until(() => document.getElementById("log-main").checkVisibility());
  await page.run(() => document.querySelector('[data-go="questions"]').click());
  await page.until(() => document.getElementById("question-reason").checkVisibility());
  let written = "";
  const lost = [];
  for (let round = 1; round <= ROUNDS; round += 1) {
    await page.inner.focus("#question-reason");
    await page.press("Control+End");
    let typed = "";
    for (let words = 0; words <= up_to(4); words += 1) typed += SOUNDS[up_to(SOUNDS.length)];
    // Killed inside a word.
    typed = typed.slice(0, typed.length - up_to(2));
    await page.type(typed);
    await pause(SOONEST_MS + up_to(WITHIN_MS));
    await browser.kill();
    written += typed;
    browser = await start({ profile });
    page = await browser.open();
    await page.until(() => document.getElementById("question-reason").checkVisibility());
    const kept = await page.run(() => document.getElementById("question-reason").value);
    if (kept !== written) {
      lost.push(`round ${round}: ${JSON.stringify(written.slice(-40))} came back as ${JSON.stringify(kept.slice(-40))}`);
      written = kept;
    }
  }
  assert.deepEqual(lost, []);
  assert.deepEqual(page.faults, []);
  await browser.close();
});

test("killed while a cell and a mark are being typed, both come back half typed", { timeout: 300_000 }, async (t) => {
  const profile = new_profile();
  t.after(() => drop_profile(profile));
  let browser = await start({ profile });
  let page = await browser.open();
  await page.inner.focus('#log-rows tr:nth-child(1) [data-col="down"]');
  await page.type("23.");
  await pause(SOONEST_MS);
  await browser.kill();
  browser = await start({ profile });
  page = await browser.open();
  await page.until(() => document.querySelector('#log-rows tr [data-col="down"]').value === "23.");
  await steps.paste(page, steps.WITH_SLIPS);
  await page.until(() => document.querySelectorAll("#log-doubts .doubt").length > 1);
  await page.run(() => document.querySelector('[data-go="profile"]').click());
  const depth = '#profile-panel [data-part="marks"] tr:nth-child(2) [data-part="depth"]';
  await page.until((at) => document.querySelector(at)?.checkVisibility(), depth);
  await page.inner.focus(depth);
  await page.type("3,");
  await pause(SOONEST_MS);
  await browser.kill();
  browser = await start({ profile });
  page = await browser.open();
  await page.until((at) => document.querySelector(at)?.value === "3,", depth);
  assert.deepEqual(page.faults, []);
  await browser.close();
});
