// Far too much of everything: the page says within a second what it does, goes on living, and a press on Stop ends it with
// all as it was before. How long the work takes depends on the machine and is not asserted.

import assert from "node:assert/strict";
import { test } from "node:test";
import { rows, with_files } from "./on_disk.js";
import * as steps from "./steps.js";

const FILES = {
  "100,000 rows.csv": `Depth (m),Temp (°C)\n${rows(100_000, (i) => `${(i / 1000).toFixed(3)},${(20 - i / 10_000).toFixed(2)}`)}\n`,
  "60,000 at one depth.csv": `Depth (m),Temp (°C)\n0,18\n1,17\n${rows(60_000, (i) => `2.0,${15 + (i % 10) / 10}`)}\n3,12\n4,10\n`,
  "20 MB of junk.csv": Buffer.alloc(19_999_996, "1,2\n"),
};

/** The longest wait without a sign of life; on a machine so busy that ordinary keys are slow, as many of those. */
const AIM_MS = 1000;
const AIM_KEYS = 25;

const tools = with_files(FILES);

/** The page with an example in it and a heart that beats: every gap between two beats without the busy line is noted. */
async function opened() {
  const page = await tools.browser.apart();
  page.hurry = true;
  page.patience_ms = 240_000;
  await page.go();
  await steps.open_example(page, "layered-summer");
  await page.run(() => {
    const busy = document.getElementById("busy");
    window.heart = { longest: 0, from: 0, said: null };
    let last = performance.now();
    let seen = false;
    setInterval(() => {
      const now = performance.now();
      if (!seen && !busy.checkVisibility()) window.heart.longest = Math.max(window.heart.longest, now - last);
      last = now;
      seen = busy.checkVisibility();
    }, 10);
    window.heart.beats = () => {
      const { longest } = window.heart;
      window.heart.longest = 0;
      return longest;
    };
    document.getElementById("file-field").addEventListener("change", () => (window.heart.from = performance.now()), true);
    new MutationObserver(() => {
      // What stands on the page before it stands still has been painted.
      if (!busy.hidden) seen = true;
      if (!busy.hidden) window.heart.said ??= performance.now() - window.heart.from;
    }).observe(busy, { attributes: true });
  });
  // How long an ordinary key takes here.
  await page.inner.focus("#log-bed");
  await page.type("9.5");
  await page.run(() => new Promise((done) => setTimeout(done, 100)));
  page.key_ms = await page.run(() => window.heart.beats());
  return page;
}

const shows = () => document.getElementById("busy").checkVisibility();
const rests = () => !document.getElementById("busy").checkVisibility();

/** What must hold at the end of each: it was said in time, and nothing went wrong. */
async function held(page) {
  const { longest, said } = await page.run(() => window.heart);
  const aim_ms = Math.max(AIM_MS, AIM_KEYS * page.key_ms);
  assert.ok(said !== null && said < aim_ms, `said after ${said} ms, an ordinary key takes ${page.key_ms} ms`);
  assert.ok(longest < aim_ms, `${longest} ms without a sign of life, an ordinary key takes ${page.key_ms} ms`);
  assert.deepEqual(page.faults, []);
}

for (const name of Object.keys(FILES)) {
  test(`${name}: said within a second, and Stop leaves all as it was`, { timeout: 300_000 }, async () => {
    const page = await opened();
    const work = await page.text("#log-main");
    await page.give_file("#file-field", tools.folder.file(name));
    await page.until(shows);
    assert.match(await page.text("#busy"), /Step [1-3] of 3/);
    // It is heard, and it is reached by keyboard.
    assert.equal(await page.run(() => document.getElementById("busy-what").closest("[role=status]") !== null), true);
    await page.tab_to("#busy-stop");
    await page.press("Enter");
    await page.until(rests);
    assert.match(await page.text("#spoken"), /^Stopped/);
    assert.ok(await page.run(() => document.activeElement !== document.body), "the focus has a place");
    assert.equal(await page.text("#log-main"), work);
    // And the work goes on.
    await page.inner.focus("#log-water");
    await page.type("Quillet Pond");
    await page.sees("#bar-who", "Quillet Pond");
    await held(page);
    await page.close();
  });
}

test("Esc stops too, and a small table afterwards is read as ever", { timeout: 300_000 }, async () => {
  const page = await opened();
  await page.give_file("#file-field", tools.folder.file("20 MB of junk.csv"));
  await page.until(shows);
  await page.press("Escape");
  await page.until(rests);
  await steps.paste(page, steps.WITH_SLIPS);
  await page.until(() => document.querySelectorAll("#log-doubts .doubt").length > 1);
  await held(page);
  await page.close();
});

test("a large table is read, a window of it stands in the page, and no key of what follows is lost", { timeout: 600_000 }, async () => {
  const page = await opened();
  tools.folder.write("large.csv", `Depth (m),Temp (°C)\n${rows(20_000, (i) => `${(i / 200).toFixed(3)},${(20 - i / 2000).toFixed(2)}`)}\n`);
  await page.give_file("#file-field", tools.folder.file("large.csv"));
  await page.until(shows);
  // 20,000 rows, of which the first 2,000 are listed.
  await page.sees("#log-more-rows", "18,000");
  await page.until(rests);
  const made = await page.run(() => document.querySelectorAll("#log-rows tr").length);
  assert.ok(made < 200, `${made} rows in the page`);
  // The others are a choice away: ten parts of 2,000.
  const first_depth = () => document.querySelector('#log-rows [data-col="depth"]').value;
  assert.equal(await page.run(first_depth), "0.0");
  await page.inner.select("#log-part", "18000");
  await page.until(() => document.querySelector('#log-rows [data-col="depth"]').value === "90.0");
  await page.until(rests);
  await page.inner.focus("#log-water");
  await page.type("Quillet Pond");
  await page.inner.focus("#log-group");
  await page.type("C");
  assert.equal(await page.run(() => document.getElementById("log-water").value), "Quillet Pond");
  await page.until(() => document.getElementById("bar-who").textContent === "Quillet Pond · group C");
  await page.until(rests);
  await held(page);
  // Opened again, from its store: said, too.
  await page.kept();
  await page.inner.reload();
  await page.until(() => document.getElementById("bar-who").textContent === "Quillet Pond · group C");
  await page.close();
});
