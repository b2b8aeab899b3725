// Help with the words: the other language beneath, the words of the trade, and a voice that is on the device.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

/** A page whose browser has these voices; what is spoken is kept in `window.spoken`. */
async function page_with(voices) {
  const page = await browser.apart();
  page.hurry = true;
  await page.inner.evaluateOnNewDocument((ours) => {
    window.spoken = [];
    const box = new EventTarget();
    Object.assign(box, { getVoices: () => ours, cancel: () => {}, speak: (one) => window.spoken.push([one.text, one.voice.name]) });
    Object.defineProperty(window, "speechSynthesis", { value: box });
    window.SpeechSynthesisUtterance = class extends EventTarget {
      constructor(text) {
        super();
        this.text = text;
      }
    };
  }, voices);
  await page.go();
  await steps.open_example(page, "layered-summer");
  await steps.go(page, "questions");
  return page;
}

test("both languages stand together, and stay so", { timeout: 90_000 }, async () => {
  const page = await page_with([]);
  await page.push("#bar-view");
  await page.tab_to("#view-both");
  await page.press(" ");
  await page.press("Escape");
  const seen = () =>
    page.run(() => {
      const under = document.querySelector("#question-ask .other-language");
      return [document.getElementById("question-ask").innerText, under?.lang, under?.innerText];
    });
  const [ask, lang, other] = await seen();
  assert.match(ask, /^How warm is your water at 3\sm\?/);
  assert.deepEqual([lang, other.replace("\u00A0", " ")], ["es", "¿Qué temperatura tiene tu agua a 3 m?"]);
  await page.kept();
  await page.go();
  await page.until(() => document.querySelector("#question-ask .other-language") !== null);
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("the words of the lake: each with its picture, in both languages, and Esc gives the focus back", { timeout: 60_000 }, async () => {
  const page = await page_with([]);
  await page.push("#questions-panel [data-words]");
  const words = await page.run(() =>
    [...document.querySelectorAll("#words-list > div")].map((one) => ({
      lit: Number(one.querySelector(".lit").getAttribute("height")),
      texts: [...one.querySelectorAll("dt, dd")].map((text) => text.innerText),
      lang: one.querySelector("[data-part=other-term]").lang,
    })),
  );
  assert.ok(words.length >= 12);
  for (const { lit, texts, lang } of words) {
    assert.ok(lit > 0 && lang === "es" && texts.every((text) => text.length > 2), texts.join());
  }
  await page.press("Escape");
  assert.match(await page.focused(), /Words of the lake/);
  await page.push("#bar-help");
  await page.push("#menu-help [data-words]");
  await page.press("Escape");
  assert.match(await page.focused(), /bar-help/);
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("a question is read aloud by a voice of the device, and by no other", { timeout: 60_000 }, async () => {
  const far = { name: "far away", lang: "en-US", localService: false, default: true };
  const here = { name: "here", lang: "en-GB", localService: true, default: false };
  const without = await page_with([far]);
  assert.equal(await without.run(() => document.getElementById("question-read").checkVisibility()), false);
  await without.close();
  const page = await page_with([far, here]);
  await page.push("#question-read");
  const [[text, voice]] = await page.run(() => window.spoken);
  assert.equal(voice, "here");
  assert.match(text, /^How warm is your water at 3/);
  assert.equal(await page.text("#question-read"), "Stop reading");
  await page.push("#question-read");
  assert.equal(await page.text("#question-read"), "Read it to me");
  assert.deepEqual(page.faults, []);
  await page.close();
});
