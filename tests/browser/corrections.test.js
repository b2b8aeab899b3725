// The doors of Log: corrections that say what they did and can be taken away, oxygen and the Secchi disk; by keyboard.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

const SHOWN = "#corrections-list .correction [data-part='said']";

test("a rail is corrected for in place, kept over a reload, and undone", { timeout: 120_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.open_example(page, "layered-summer");
  await page.push("#log-to-corrections");
  await page.until(() => document.activeElement?.id === "corrections-title");
  await page.push("#corrections-ways button:first-child");
  // The first field of what was added has the focus.
  await page.until(() => document.activeElement?.id === "correction-0-above_water");
  await page.type("0.6");
  await page.sees(SHOWN, "Every depth 0.6 m less: the marks were read 0.6 m above the water.");
  await page.push("#corrections-done");
  await page.until(() => document.activeElement?.id === "log-to-corrections");
  await page.sees("#log-corrected", "Every depth 0.6 m less");
  // The mark stays in its cell, the corrected depth stands behind it.
  const row = await page.run(() => {
    const depth = [...document.querySelectorAll('#log-rows [data-col="depth"]')].find((one) => one.value === "3.0");
    return depth?.parentElement?.innerText.trim();
  });
  assert.equal(row, "2.4");
  await page.inner.reload({ waitUntil: "load" });
  await page.started();
  await page.sees("#log-corrected", "Every depth 0.6 m less");
  await page.push("#log-undo");
  await page.push("#log-undo");
  await page.until(() => document.getElementById("log-corrected")?.innerText.trim() === "");
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});

test("oxygen and the Secchi disk are typed and shown beside the readings", { timeout: 120_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.open_example(page, "layered-summer");
  await page.push("#log-to-companions");
  await page.tab_to("#companion-gone");
  await page.type("3.4");
  await page.tab_to("#companion-back");
  await page.type("3.0");
  await page.sees("#companions-said", "Secchi depth 3.2 m.");
  await page.tab_to("#companions-rows input");
  await page.type("8.6");
  await page.press("Enter");
  await page.type("8.5");
  const typed = await page.run(() =>
    [...document.querySelectorAll("#companions-rows input")].slice(0, 3).map((one) => one.value),
  );
  assert.deepEqual(typed, ["8.6", "8.5", ""]);
  await page.until(() => /^\d+$/.test(document.querySelector("#companions-rows [data-part='share']")?.textContent ?? ""));
  await page.push("#companions-done");
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});
