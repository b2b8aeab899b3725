// Every state of the page is looked at by axe-core, which knows the published rules for accessibility (WCAG 2.2, levels A
// and AA, and its makers' own good practice); and no state needs sideways scrolling on a phone or at 400 %.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import { STATES } from "./states.js";
import * as steps from "./steps.js";

const from_web = createRequire(new URL("../../web/package.json", import.meta.url));
const AXE = readFileSync(from_web.resolve("axe-core/axe.min.js"), "utf8");

/** Colours differ by theme only: a few busy states stand for all. */
const IN_EVERY_THEME = ["first-open", "two-cells-to-look-at", "what-was-found", "a-question", "notebooks"];

/** What a theme changes. */
const OF_A_THEME = ["color-contrast", "link-in-text-block"];

async function findings(page, rules = null) {
  // Nothing moves any more.
  await page.run(() => new Promise((done) => setTimeout(done, 400)));
  await page.run(AXE);
  const found = await page.run(async (only) => {
    const { violations } = await window.axe.run(document, { resultTypes: ["violations"], ...(only && { runOnly: only }) });
    return violations.map((one) => `${one.id} (${one.help}): ${one.nodes.map((node) => node.html.slice(0, 160)).join(" | ")}`);
  }, rules);
  return found;
}

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

/** The page on its own, without the walk to each button. */
async function opened(viewport = null) {
  const page = await browser.apart(viewport);
  page.hurry = true;
  await page.go();
  return page;
}

/** Where the page of the last state stands, if that state was found in order. */
let last = null;

/** The page in a state: gone on with where the last one began at the same place, else opened. */
async function reached(reach) {
  const on = last !== null && reach.base !== undefined && [last.reach, last.reach.base].includes(reach.base) ? last.page : null;
  if (on === null) await last?.page.close();
  last = null;
  if (on !== null) {
    await reach.step(on);
    return on;
  }
  const page = await opened();
  await reach(page);
  return page;
}

for (const [name, reach] of Object.entries(STATES)) {
  test(`axe finds nothing: ${name}`, { timeout: 180_000 }, async () => {
    const page = await reached(reach);
    assert.deepEqual(await findings(page), []);
    if (IN_EVERY_THEME.includes(name)) {
      for (const theme of ["night", "sunlight", "projector"]) {
        await page.run((chosen) => {
          document.querySelector(`#menu-view [name="theme"][value="${chosen}"]`).click();
        }, theme);
        assert.deepEqual(await findings(page, OF_A_THEME), [], theme);
      }
    }
    assert.deepEqual(page.faults, []);
    last = { reach, page };
  });
}

/** A phone, and what a laptop has left at 400 %; both under a finger, which needs more room than a mouse. */
const NARROW = [
  { width: 390, height: 844, hasTouch: true, isMobile: true },
  { width: 341, height: 150, hasTouch: true, isMobile: true },
];

for (const name of ["first-open", "two-cells-to-look-at", "one-question-first", "how-it-is-computed", "no-marks-yet", "your-marks", "what-was-found", "a-question", "mixed-layer-right", "two-ways-shown", "report-written", "class-sheet", "class-answers"]) {
  test(`one way of scrolling is enough: ${name}`, { timeout: 180_000 }, async () => {
    const page = await opened(NARROW[0]);
    await STATES[name](page);
    for (const size of NARROW) {
      await page.inner.setViewport(size);
      await page.run(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      const wide = await page.run(() => document.documentElement.scrollWidth);
      assert.ok(wide <= size.width, `${wide} px of ${size.width}`);
      // Only a table of readings may be moved sideways; no word on a grip leaves its grip.
      const spilt = await page.run(() => {
        const shown = [...document.querySelectorAll("#app *")].filter((el) => el.checkVisibility());
        const sideways = shown.filter((el) => /auto|scroll/.test(getComputedStyle(el).overflowX) && el.scrollWidth > el.clientWidth + 1);
        const words = shown.filter((el) => {
          const grip = el.matches(".grip b") ? el.parentElement.getBoundingClientRect() : null;
          const word = el.getBoundingClientRect();
          return grip !== null && (word.left < grip.left || word.right > grip.right || grip.right > innerWidth);
        });
        return [...sideways.filter((el) => el.querySelector("table input, table select") === null), ...words].map((el) => el.outerHTML.slice(0, 120));
      });
      assert.deepEqual(spilt, [], `at ${size.width} px`);
    }
    await page.close();
  });
}

test("the reader walks the readings by arrow key, each is spoken once", { timeout: 120_000 }, async () => {
  const page = await opened();
  await steps.open_example(page, "layered-summer");
  await steps.to_profile(page);
  await page.tab_to("#profile-picture .walk");
  await page.press("Home");
  const first = await page.run(() => document.querySelector("#profile-picture .walk").getAttribute("aria-valuetext"));
  await page.press("ArrowDown");
  const second = await page.run(() => document.querySelector("#profile-picture .walk").getAttribute("aria-valuetext"));
  assert.match(first, /23\.4/);
  assert.notEqual(first, second);
  await page.close();
});
