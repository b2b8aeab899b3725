// How sure each depth is, is tried out beside the page: the busy line says how far it is, the person goes on, and Stop keeps
// the tries that are done. How long they take depends on the machine and is not asserted.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import { rows } from "./on_disk.js";
import * as steps from "./steps.js";

/** A layered water of our own, read at so many depths that its tries take seconds. */
const DEPTHS = 1500;
const LONG_CAST = `Depth (m)\tGoing down (°C)\n${rows(DEPTHS, (i) => {
  const depth_m = i / 125;
  const below = depth_m - 5;
  return `${depth_m.toFixed(3)}\t${(14 - (7 * below) / Math.sqrt(1 + below * below)).toFixed(2)}`;
})}`;

let browser;
before(async () => {
  browser = await start();
});
after(async () => {
  await browser.close();
});

async function on_profile() {
  const page = await browser.apart();
  page.patience_ms = 60_000;
  await page.go();
  await steps.paste(page, LONG_CAST);
  await page.sees("#log-understood", "1,500");
  await steps.to_profile(page);
  return page;
}

/** "1,500 of 10,000 tries": the number of tries that the busy line says are done, once there are some. */
const tries_done = () => {
  const busy = document.getElementById("busy");
  const done = busy.checkVisibility() ? /([\d,]+) of 10,000 tries/.exec(busy.textContent) : null;
  return done ? Number(done[1].replace(",", "")) : 0;
};
const rests = () => !document.getElementById("busy").checkVisibility();

/** What "How sure?" says above its table, after the marks are checked. */
async function how_sure(page) {
  await steps.place_marks(page, ["4", "5", "7"]);
  await steps.check_marks(page);
  await page.push('#profile-panel .found-panel [data-part="to-sure"]');
  return page.until(() => document.querySelector("#profile-panel .door-panel")?.textContent);
}

test("Stop keeps the tries that are done, and says how few they are", { timeout: 300_000 }, async () => {
  const page = await on_profile();
  const seen = await page.until(tries_done);
  assert.match(await page.text("#busy"), /Stop keeps the tries that are done/);
  // The focus stays where it was: the person may be typing a mark.
  assert.equal(await page.run(() => document.getElementById("busy").contains(document.activeElement)), false);
  await page.press("Escape");
  await page.until(rests);
  assert.match(await page.text("#spoken"), /^Stopped\. The tries that were done count/);
  const said = await how_sure(page);
  const kept = Number(/Only ([\d,]+) tries were made before Stop/.exec(said)?.[1].replace(",", ""));
  assert.ok(kept >= seen && kept < 10_000 && kept % 500 === 0, `${kept} kept after ${seen} were seen: ${said}`);
  // They are not begun again behind the person's back: when all other work has ended, it says the same.
  await page.until(rests);
  assert.ok((await page.text("#profile-panel .door-panel")).includes(`${kept.toLocaleString("en")} tries were made before Stop`));
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("a reading that changes begins the tries anew, and left alone they all come", { timeout: 300_000 }, async () => {
  const page = await on_profile();
  await page.until(tries_done);
  await page.press("Escape");
  await page.until(rests);
  await steps.go(page, "log");
  await page.inner.focus("#log-bed");
  await page.type("12.5");
  await steps.to_profile(page);
  await page.until(tries_done);
  await page.until(rests);
  const said = await how_sure(page);
  assert.match(said, /looked for the layers again, ten thousand times/);
  assert.deepEqual(page.faults, []);
  await page.close();
});
