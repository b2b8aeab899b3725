// A teacher makes a lesson on the page, saves it and prints its sheet; a group opens the file and works by it.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import { Folder } from "./on_disk.js";
import * as steps from "./steps.js";

let browser;
const folder = new Folder({ "no-lesson.csv": "depth,temp\n1,20\n" });
before(async () => {
  browser = await start();
});
after(async () => {
  folder.drop();
  await browser.close();
});

const LESSON = '#class-panel [data-view="lesson"]';
const row = (which) => `${LESSON} [data-part="taken"] li:nth-child(${which})`;

/** The lesson's panel, from the bar. */
async function to_lesson(page) {
  await page.go();
  await page.run(() => document.querySelector('.steps [data-go="class"]').click());
  await page.until(() => document.getElementById("class-panel").checkVisibility());
  await page.push('#class-panel [data-view="list"] [data-part="to-lesson"]');
  await page.until((at) => document.querySelector(at).checkVisibility(), LESSON);
}

/** The first words of each question of the lesson, in order. */
const names = (page) =>
  page.run((at) => [...document.querySelectorAll(`${at} [data-part="taken"] [data-part="name"]`)].map((one) => one.textContent), LESSON);

async function write(page, selector, words) {
  await page.run((s) => document.querySelector(s).focus(), selector);
  await page.type(words);
}

test("a lesson is made by keyboard, saved, and a group works by it", { timeout: 120_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await to_lesson(page);
  const first = await names(page);
  assert.ok(first.length >= 8, first.join());

  await write(page, "#lesson-title", "Our <b>pond</b>");
  await write(page, "#lesson-note", "Bring a pencil.");
  // The second goes to the top, the last one out; the focus goes with what moves.
  await page.push(`${row(2)} [data-part="up"]`);
  assert.deepEqual((await names(page)).slice(0, 2), [first[1], first[0]]);
  assert.match(await page.focused(), /Down/);
  await page.push(`${row(first.length)} [data-part="leave"]`);
  assert.equal((await names(page)).length, first.length - 1);
  await page.push(`${LESSON} [data-part="undo-lesson"]`);
  assert.equal((await names(page)).length, first.length);
  // One of the teacher's own, with six points, before all the others.
  await page.push(`${LESSON} [data-part="add-own"]`);
  await page.type("How warm is it where you can still stand, at 1 m?");
  const own = row(first.length + 1);
  await page.inner.select(`${own} [data-part="by"]`, "temp_at");
  await write(page, `${own} [data-part="at"]`, "1");
  await page.press("Tab");
  await page.run((at) => document.querySelector(at).select(), `${own} [data-part="points"]`);
  await page.type("6");
  await page.press("Tab");
  await page.sees(`${LESSON} [data-part="sum"]`, `${first.length + 1} questions, ${first.length * 4 + 6} points`);
  for (let at = first.length + 1; at > 1; at -= 1) await page.push(`${row(at)} [data-part="up"]`);

  await page.keep_saved();
  await page.run(() => {
    window.print = () => {
      window.printed = document.getElementById("lesson-sheet").innerText;
    };
  });
  await page.push(`${LESSON} [data-part="save-lesson"]`);
  const file = await page.until(() => window.saved);
  await page.push(`${LESSON} [data-part="print-lesson"]`);
  const sheet = await page.run(() => document.getElementById("lesson-sheet").textContent);
  assert.match(sheet, /Our <b>pond<\/b>/);
  assert.match(sheet, /where you can still stand, at 1 m\? \(6\)/);

  // A reload finds the lesson in the making.
  await page.go();
  await page.until((at) => document.querySelector(at)?.checkVisibility(), LESSON).catch(() => to_lesson(page));
  assert.equal((await names(page)).length, first.length + 1);
  assert.deepEqual(page.faults, []);
  await page.close();

  // A group opens it.
  const group = await browser.apart();
  group.hurry = true;
  await group.go();
  await steps.open_example(group, "layered-summer");
  folder.write("lesson.json", file);
  await group.give_file("#file-field", folder.file("lesson.json"));
  await group.sees("#log-lesson", "Our <b>pond</b>");
  await group.push("#lesson-take");
  await steps.go(group, "questions");
  await group.sees("#question-ask", "How warm is it where you can still stand, at 1 m?");
  assert.deepEqual(group.faults, []);
  await group.close();
});

test("what is no lesson is said, and the lesson stays", { timeout: 60_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await to_lesson(page);
  await write(page, "#lesson-title", "Mine");
  await page.give_file("#lesson-file", folder.file("no-lesson.csv"));
  await page.sees(`${LESSON} [data-part="said"]`, "is not a lesson");
  assert.equal(await page.run(() => document.getElementById("lesson-title").value), "Mine");
  assert.deepEqual(page.faults, []);
  await page.close();
});
