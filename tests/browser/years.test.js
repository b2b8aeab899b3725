// The year book: casts from files, their days, and what two of them can show.

import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { start } from "./browser.js";

const FOLDER = fileURLToPath(new URL("hand_ins/", import.meta.url));
const FILES = readdirSync(FOLDER).map((name) => FOLDER + name);
const YEARS = '#class-panel [data-view="years"]';

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

async function to_years(page) {
  await page.go();
  await page.run(() => document.querySelector('.steps [data-go="class"]').click());
  await page.push('#class-panel [data-view="list"] [data-part="to-years"]');
  await page.until((at) => document.querySelector(at).checkVisibility(), YEARS);
}

/** Takes the cast of a row in hand and gives it its day and place. */
async function date(page, row, day) {
  await page.push(`${YEARS} tbody tr:nth-child(${row}) button`);
  await page.run((text) => {
    for (const [id, value] of [
      ["years-place", "the dock"],
      ["years-day", text],
    ]) {
      const field = document.getElementById(id);
      field.value = value;
      field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  }, day);
}

test("casts of other days are set beside one another, and no line is drawn through them", { timeout: 120_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await to_years(page);
  const field = await page.inner.$("#years-files");
  await field.uploadFile(...FILES);
  await page.sees(`${YEARS} [data-part="sum"]`, "casts, on 0 days of 0 years.");
  const casts = await page.run((at) => document.querySelectorAll(`${at} tbody tr`).length, YEARS);
  assert.ok(casts >= 5, String(casts));
  // The first two are short ones. What is dated comes before what is not.
  await date(page, 3, "2024-10-12");
  await date(page, 4, "2025-10-14");
  await page.sees(`${YEARS} [data-part="sum"]`, "on 2 days of 2 years.");
  await page.sees(`${YEARS} [data-part="pairs"]`, "2 days apart in the year.");
  await page.sees(`${YEARS} [data-part="pairs"]`, "on average");
  await page.sees(`${YEARS} [data-part="trend"]`, "No trend is offered");
  assert.equal(await page.run((at) => document.querySelector(`${at} tbody tr button`).textContent, YEARS), "2024-10-12 · G · the dock");
  const inked = await page.run(() => {
    const canvas = document.querySelector("#class-picture canvas");
    const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
    const colours = new Set();
    for (let at = 0; at < data.length; at += 400) colours.add(data.slice(at, at + 3).join());
    return colours.size;
  });
  assert.ok(inked > 5, `${inked} colours`);
  // It is there after a reload.
  await to_years(page);
  await page.sees(`${YEARS} [data-part="sum"]`, "on 2 days of 2 years.");
  await page.push(`${YEARS} tbody tr:nth-child(1) button`);
  await page.push(`${YEARS} [data-part="out"]`);
  await page.sees(`${YEARS} [data-part="sum"]`, "on one day of one year.");
  assert.deepEqual(page.faults, []);
  await page.close();
});
