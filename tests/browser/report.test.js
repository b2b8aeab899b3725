// The report: written by keyboard, printed on one page of either paper, saved as a file that carries its data.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { NAME, start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

/** A cast of 30 m, each mark read twice. */
const LONG = ["Depth (m)\tGoing down\tComing up"]
  .concat(
    Array.from({ length: 60 }, (_, i) => {
      const temp_c = 8 + 14 / (1 + Math.exp((i / 2 - 8) / 1.2));
      return `${(i / 2).toFixed(1)}\t${temp_c.toFixed(1)}\t${(temp_c + 0.1).toFixed(1)}`;
    }),
  )
  .join("\n");

/** How many pages a printed file has, and how large it is. Firefox's driver prints a file with packed page marks. */
async function printed(page, format) {
  const bytes = Buffer.from(await page.inner.pdf({ format }));
  return { pages: bytes.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0, kb: bytes.length / 1024 };
}

test("a report is written, printed on one page, and saved with its data", { timeout: 180_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.open_example(page, "layered-summer");
  await steps.to_profile(page);
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await steps.go(page, "report");
  // Nothing is uncovered: no layer in the page, none to put in.
  await page.sees("#report-page", "covered until you check");
  assert.doesNotMatch(await page.text("#report-panel"), /thermocline|per metre/);
  await steps.go(page, "profile");
  await steps.check_marks(page);
  await steps.go(page, "report");
  await steps.write_report(page);
  assert.match(await page.run(() => document.getElementById("report-claim").value), /^The steepest part lies at 3.75\u00A0m \(/);
  await page.sees("#report-page", "Warm water on cold");
  await page.sees("#report-page", "No other half metre loses as much.");
  await page.sees("#report-panel .checks", "a range yes");
  // Markup in a text stays text.
  await page.tab_to("#report-title");
  await page.type(" </script><b>&amp;");
  await page.sees("#report-page .said", "Warm water on cold </script><b>&amp;");

  // Codes of class and seat: a friendly word without them, and they travel with the work.
  await page.sees("#report-codes", "You can hand in without");
  await page.tab_to("#report-class");
  await page.type("9B");
  await page.tab_to("#report-seat");
  await page.type("07");
  await page.sees("#report-codes", "The codes tell");
  await page.sees('#report-page [data-part="who"]', "9B · 07");

  if (NAME === "chromium") {
    for (const format of ["A4", "Letter"]) {
      const { pages, kb } = await printed(page, format);
      assert.equal(pages, 1, format);
      assert.ok(kb < 150, `${kb} KB`);
    }
  }

  await page.push('#report-hand-in [data-part="save"]');
  const hand_in = JSON.parse(readFileSync(await browser.saved("-hand-in.json"), "utf8"));
  assert.equal(hand_in.sheet.report.title, "Warm water on cold </script><b>&amp;");
  assert.deepEqual([hand_in.sheet.class, hand_in.sheet.seat], ["9B", "07"]);
  await page.sees('#report-hand-in [data-part="receipt"]', "Receipt");
  await page.push('#report-hand-in [data-part="save-page"]');
  const saved = await browser.saved("-report.html");
  assert.deepEqual(page.faults, []);
  assert.deepEqual(page.elsewhere(), []);
  await page.inner.close();

  // The file opens by itself, without a script, and holds the same hand-in.
  const alone = await browser.tab();
  await alone.inner.goto(pathToFileURL(saved).href, { waitUntil: "load" });
  await alone.sees(".page .said", "Warm water on cold </script><b>&amp;");
  assert.equal(await alone.run(() => document.querySelectorAll(".page .drawn svg").length), 1);
  const data = await alone.run(() => document.getElementById("layercast-hand-in").textContent);
  assert.deepEqual(JSON.parse(data), hand_in);
  assert.deepEqual(alone.faults, []);
  await alone.inner.close();
});

test("tables and pictures are saved whole", { timeout: 120_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.go(page, "log");
  await steps.paste(page, steps.WITH_SLIPS);
  await page.until(() => document.querySelectorAll("#log-doubts .doubt").length > 1);
  await steps.go(page, "report");
  for (const [part, ending] of [
    ["save-table", ".csv"],
    ["save-sidecar", ".csv-metadata.json"],
    ["save-quality", "-quality.csv"],
    ["save-svg", ".svg"],
    ["save-png", ".png"],
  ]) {
    await page.push(`#report-hand-in [data-part="${part}"]`);
    const bytes = readFileSync(await browser.saved(ending));
    if (part === "save-table") assert.equal(bytes.toString().trim().split("\r\n").length, 41, "a head and 40 readings");
    if (part === "save-sidecar") assert.equal(JSON.parse(bytes.toString()).tableSchema.primaryKey, "number");
    if (part === "save-svg") assert.match(bytes.toString(), /^<svg[\s\S]*<\/svg>\s*$/);
    if (part === "save-png") assert.equal(bytes.subarray(1, 4).toString(), "PNG");
  }
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});

/** Only one of the browsers prints to a file on command. */
const of_paper = NAME === "chromium" ? test : () => {};

of_paper("a long cast fits one page too", { timeout: 120_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.go(page, "log");
  await steps.paste(page, LONG);
  await page.until(() => document.querySelectorAll("#log-rows tr").length > 50);
  await steps.go(page, "report");
  for (const format of ["A4", "Letter"]) {
    const { pages, kb } = await printed(page, format);
    assert.equal(pages, 1, format);
    assert.ok(kb < 150, `${kb} KB`);
  }
  await page.inner.close();
});
