// A teacher's lesson with a question in words and the two that need another group's cast, which comes out of a hand-in.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

const FOLDER = new URL("./hand_ins/", import.meta.url);
const NAME = "hand-in.json";
const HAND_IN = readFileSync(new URL(NAME, FOLDER), "utf8");

test("words are kept as written, and two casts are compared", { timeout: 180_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.paste(page, steps.LESSON_OF_GROUPS);
  await page.push("#lesson-take");
  await steps.paste(page, steps.WITH_OXYGEN);
  await page.until(() => document.getElementById("log-main")?.checkVisibility());
  await steps.go(page, "questions");
  await page.sees("#questions-panel", "needs a second cast");
  assert.equal(await steps.asked(page), "What did you expect of the water?");
  await page.tab_to("#questions-panel textarea");
  assert.equal(await page.run(() => document.getElementById("question-reason").checkVisibility()), false);
  await page.type("Warm on top.");
  await steps.press_button(page);
  await page.sees("#questions-panel", "Kept as you wrote it: Warm on top.");
  await page.sees("#questions-panel", "Your teacher looks for this: two reasons");
  await steps.go(page, "log");
  await page.push("#log-to-other");
  await page.run((text) => {
    const field = document.getElementById("log-other-pasted");
    field.value = text;
  }, HAND_IN);
  await page.push("#log-other-take");
  await page.sees("#log-other-said", "readings, to");
  await page.push("#log-other-done");
  await steps.go(page, "questions");
  await page.sees("#questions-panel", "Question 1 of 3");
  await steps.go_to_question(page, 2);
  await page.sees("#questions-panel", "opens when your marks on Profile are checked");
  await steps.go_to_question(page, 3);
  await page.sees("#question-ask", "What explains best why your cast differs");
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});

test("a lesson opens in its language, one without a language in the reader's", { timeout: 60_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await page.go();
  const seen = () => page.run(() => [document.documentElement.lang, document.querySelector('[data-say="page-bar-questions"]').innerText]);
  const taken = async (language) => {
    await steps.paste(page, JSON.stringify({ ...JSON.parse(steps.LESSON_OF_GROUPS), id: `in ${language}`, language }));
    await page.until(() => document.getElementById("log-lesson").checkVisibility());
    await page.push("#lesson-take");
    await page.until(() => !document.getElementById("log-lesson").checkVisibility());
    return seen();
  };
  assert.deepEqual(await taken(""), ["en", "Questions"]);
  assert.deepEqual(await taken("es"), ["es", "Preguntas"]);
  // Left as it is, not set back.
  assert.deepEqual(await taken(""), ["es", "Preguntas"]);
  assert.deepEqual(await taken("en"), ["en", "Questions"]);
  assert.deepEqual(page.faults, []);
  await page.close();
});
