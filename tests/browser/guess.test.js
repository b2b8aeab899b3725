// The guess before the first reading: five points typed and placed by touching the picture, sealed by the first reading,
// beside the profile in the report.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

test("five points are guessed, sealed by the first reading, and stand in the report", { timeout: 180_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.guess(page);
  const texts = () =>
    page.run(() => [...document.querySelectorAll("#guess-rows input")].map((field) => field.value).filter(Boolean));
  assert.deepEqual((await texts()).slice(0, 4), ["0", "22", "3", "20"]);
  assert.equal((await texts()).length, 10, "touching the picture has filled the other three points");
  // Nobody has read yet: it can be changed, also after a reload.
  await page.inner.reload({ waitUntil: "load" });
  await page.started();
  await page.push("#log-to-guess");
  await page.tab_to("#guess-rows input");
  await page.press("End");
  await page.type("1");
  assert.equal((await texts())[0], "01");
  await page.push("#guess-done");
  await page.until(() => document.getElementById("log-empty")?.checkVisibility());
  await steps.paste(page, steps.WITH_OXYGEN);
  await page.until(() => document.getElementById("log-main")?.checkVisibility());
  assert.equal(await page.run(() => document.getElementById("log-to-guess").checkVisibility()), false);
  // Taking the readings back does not open it again.
  await page.push("#log-undo");
  await page.until(() => document.getElementById("log-empty")?.checkVisibility());
  assert.equal(await page.run(() => document.getElementById("log-to-guess").checkVisibility()), false);
  await steps.paste(page, steps.WITH_OXYGEN);
  await page.until(() => document.getElementById("log-main")?.checkVisibility());
  await steps.go(page, "report");
  await page.sees("#report-page", "Our guess before the first reading");
  await page.sees("#report-page", "20.0 °C at 3.0 m");
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});
