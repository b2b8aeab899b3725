// The whole way of a group, by keyboard alone, from a file and without a network: table, doubts, marks, check, questions,
// interruption, another laptop. The readings are invented; what is right about them is worked out beside each answer.

import assert from "node:assert/strict";
import { test } from "node:test";
import { ADDRESS, drop_profile, NAME, new_profile, start } from "./browser.js";
import * as steps from "./steps.js";

/** What the walk reads on its way, in both languages. */
const WORDS = {
  en: {
    reader: "en-US",
    title: "Find the layers of your lake",
    understood: "Read 20 rows: depth in metres, going down and coming up in °C",
    lost_point: "Did the point get lost?",
    marking: "Where are the layers?",
    found: "What the rules found",
    inside: "is inside the range: 3.5 to 4.0 m",
    deep: "6.5 m",
    depth: "3.75",
    questions: /Question 1 of 8/,
    all_done: "All 8 questions are done.",
    decimal: ".",
  },
  es: {
    reader: "es-ES",
    title: "Encuentra las capas de tu lago",
    understood: "Leídas 20 filas: profundidad en metros, al bajar y al subir en °C",
    lost_point: "¿Se perdió",
    marking: "¿Dónde están las capas?",
    found: "Lo que encontraron las reglas",
    inside: "está dentro del margen: de 3,5 a 4,0 m",
    deep: "6,5 m",
    depth: "3,75",
    questions: /Pregunta 1 de 8/,
    all_done: "Las 8 preguntas están hechas.",
    decimal: ",",
  },
};

/** Words that would give the thermocline or the deep layer away, searched in everything a browser shows or speaks. */
async function gives_away(page, words) {
  const html = await page.run(() => {
    const copy = document.documentElement.cloneNode(true);
    for (const block of copy.querySelectorAll("script, style")) block.remove();
    return copy.outerHTML;
  });
  return words.filter((word) => html.includes(word));
}

/** Both browsers are given the same words: Firefox walks in one language. */
const WALKED = Object.entries(WORDS).filter(([lang]) => NAME === "chromium" || lang === "es");

for (const [lang, words] of WALKED) {
  test(`a group walks from a pasted table to eight answers, ${lang}`, { timeout: 600_000 }, async (t) => {
    const own = new_profile();
    const other = new_profile();
    t.after(() => [own, other].forEach(drop_profile));
    const n = (number) => number.replace(".", words.decimal);
    let browser = await start({ profile: own, language: words.reader });
    let page = await browser.open();
    // Each step stands on the one before: after a failure the rest could only fail too.
    let failed = null;
    const step = (name, does) =>
      t.test(name, async () => {
        if (failed !== null) throw new Error(`not tried: "${failed}" failed before it`);
        failed = name;
        await does();
        failed = null;
      });

    await step("the page says what it is for and offers four ways in", async () => {
      await page.sees("#log-empty h1", words.title);
      const lead = await page.text("#log-empty .lead");
      assert.equal(lead.match(/\./g).length, 2, "two sentences");
      for (const way of ["#log-type", "#log-paste", "#log-open", "#log-example"]) await page.tab_to(way);
      for (const name of steps.EXAMPLES) await page.tab_to(`.link[data-example="${name}"]`);
    });

    await step("a table from the clipboard is read, and two cells are doubted", async () => {
      // Spain writes the decimal comma, and so does its spreadsheet.
      await page.copy(lang === "es" ? steps.WITH_SLIPS.replaceAll(".", ",") : steps.WITH_SLIPS);
      await page.press("Control+v");
      await page.sees("#log-understood", words.understood);
      await page.sees("#log-doubts", words.lost_point);
      const doubts = await page.run(() => document.querySelectorAll("#log-doubts .doubt").length);
      assert.equal(doubts, 2);
      const drawn = await page.until(() => {
        const canvas = document.querySelector("#log-picture canvas");
        return canvas.width > 300 && canvas.checkVisibility();
      });
      assert.ok(drawn, "what is clear is drawn at once");
    });

    await step("settling is a choice that can be taken back", async () => {
      // The first way out of the first doubt has the focus: "Make it 17.7".
      assert.ok(await page.run(() => document.activeElement.closest("#log-doubts .doubt") !== null), await page.focused());
      await page.press("Enter");
      await page.until(() => document.querySelectorAll("#log-doubts .doubt").length === 1);
      await page.push("#log-undo");
      await page.until(() => document.querySelectorAll("#log-doubts .doubt").length === 2);
      for (let left = 2; left > 0; left -= 1) {
        // 17.7 for 177, then 10.5 for 15.0: what the group had written on its sheet.
        await page.push("#log-doubts .doubt button");
        await page.until((count) => document.querySelectorAll("#log-doubts .doubt").length === count, left - 1);
      }
    });

    await step("before the check nothing on the page holds the answer", async () => {
      await steps.to_profile(page);
      await page.sees("#profile-panel .marking h1", words.marking);
      assert.deepEqual(await gives_away(page, [words.depth]), []);
    });

    await step("three marks are placed: typed, by arrow keys, typed with give or take", async () => {
      await steps.place_marks(page, [n("2.5")]);
      // On its grip: the first press sets the mark at the first reading; then a mark of the cable at a time, 0.1 m at a time.
      await page.tab_to('#profile-picture [data-grip="thermocline"]');
      await page.press("End", "Home", "ArrowDown");
      await page.tab_to('#profile-panel [data-part="marks"] tr:nth-child(2) [data-part="depth"]');
      await page.press("Control+a");
      await page.type("4");
      await page.tab_to('#profile-panel [data-part="marks"] tr:nth-child(3) [data-part="depth"]');
      await page.type("6");
      await page.press("Tab");
      await page.type(n("0.5"));
      await page.until(() => document.querySelector('#profile-panel .marking [data-part="acts"] .go')?.ariaDisabled !== "true");
      assert.deepEqual(await gives_away(page, [words.depth]), []);
    });

    await step("questions 1, 4 and 5 are answered before the check", async () => {
      await steps.go(page, "questions");
      assert.match(await page.text("#questions-panel"), words.questions);
      // 21.9 and 21.7 at 3 m.
      await steps.answer(page, { temp: n("21.8"), unit: "c" });
      await right(page);
      // (17.7 + 17.4)/2 − (13.6 + 13.4)/2 = 17.55 − 13.50
      await steps.answer(page, { drop: n("4.05"), unit: "c" });
      await right(page);
      // (17.55 − 15.30) °C in 0.5 m
      await steps.answer(page, { rate: n("4.5"), unit: "c_per_m" });
      await right(page);
      assert.deepEqual(await gives_away(page, [words.depth]), []);
    });

    await step("the check shows value, range and rule beside the marks", async () => {
      await steps.go(page, "profile");
      await steps.check_marks(page);
      await page.sees("#profile-panel .found-panel h1", words.found);
      await page.sees("#profile-panel .items", words.inside);
      await page.sees("#profile-panel .items", n("2.7"));
      await page.sees("#profile-panel .items", words.deep);
    });

    await step("other rules stand behind one door", async () => {
      await page.push('#profile-panel .found-panel [data-part="to-rules"]');
      await page.until(() => document.querySelectorAll("#profile-panel .rulelist tbody tr").length >= 6);
      await page.press("Tab", "Tab", "Enter");
    });

    await step("a first miss names the missing step and no number of the answer", async () => {
      await steps.go(page, "questions");
      await steps.go_to_question(page, 4);
      // The whole drop in half a metre, 2.5 °C, in place of 5.0 °C per metre.
      await steps.answer(page, { from: n("3.5"), to: "4", rate: n("2.5") });
      await steps.press_button(page);
      await page.until(() => document.querySelector("#questions-panel .part .say")?.checkVisibility());
      const said = await page.text("#questions-panel .parts");
      assert.ok(!said.includes(n("5.0")), said);
      await steps.answer(page, { rate: "5" });
      await right(page);
    });

    await step("the rest of the questions: mixed layer, thermocline, its range, the two legs", async () => {
      // T(0.5) = 23.4; 22.4 lies between 22.75 at 2.5 m and 21.80 at 3.0 m: 2.5 + 0.5 · 0.35/0.95 = 2.68 m.
      await steps.answer(page, { temp: n("22.4"), from: n("2.5"), to: "3", depth: n("2.7") });
      await right(page);
      await steps.answer(page, { depth: n("3.75") });
      await right(page);
      await steps.answer(page, { from: n("3.5"), to: "4" });
      await right(page);
    });

    await step("a reload in mid-word loses no key", async () => {
      await page.tab_to("#question-reason");
      await page.type("we took them apart, ma");
      await page.inner.reload();
      await page.started();
      await page.until(() => document.getElementById("screen-questions")?.checkVisibility());
      assert.equal(await page.run(() => document.getElementById("question-reason").value), "we took them apart, ma");
    });

    await step("closed and opened again, it goes on at the same question", async () => {
      await page.tab_to("#question-reason");
      await page.press("End");
      await page.type("rk by mark");
      await browser.close();
      browser = await start({ profile: own, language: words.reader });
      page = await browser.open();
      await page.until(() => document.getElementById("screen-questions")?.checkVisibility());
      const reason = await page.run(() => document.getElementById("question-reason").value);
      assert.equal(reason, "we took them apart, mark by mark");
    });

    await step("saved to a file, it goes on at the same question on another laptop", async () => {
      const before = await page.text("#questions-panel");
      await page.push("#bar-water");
      await page.push("#notebooks-save");
      const file = await browser.saved(".json");
      const laptop = await start({ profile: other, language: words.reader });
      const there = await laptop.open();
      assert.deepEqual(await there.text("#log-empty h1"), words.title);
      await there.give_file("#file-field", file);
      await there.until(() => document.getElementById("screen-questions")?.checkVisibility());
      assert.equal(await there.text("#questions-panel"), before);
      // |down − up| add up to 2.0 °C over 20 marks.
      await steps.answer(there, { apart: n("0.1"), unit: "c", way: "unsigned" });
      await steps.press_button(there);
      await there.until(() => document.querySelector("#questions-panel .part .say")?.checkVisibility());
      // That was the eighth, in sight and aloud.
      await there.sees('#questions-panel [data-part="all-done"]', words.all_done);
      assert.ok((await there.run(() => document.getElementById("spoken").textContent)).includes(words.all_done));
      assert.deepEqual(there.elsewhere(), []);
      assert.deepEqual(there.faults, []);
      await laptop.close();
    });

    await step("nothing was asked of a network, and no fault was logged", async () => {
      assert.deepEqual(page.elsewhere(), []);
      if (NAME === "chromium") assert.deepEqual(page.requests, [ADDRESS]);
      assert.deepEqual(page.faults, []);
    });
    await browser.close();
  });
}

/** Checks the answer in hand, waits until it is settled, and goes on. */
async function right(page) {
  const before = await steps.asked(page);
  await steps.press_button(page);
  await page.until(() => document.querySelector("#questions-panel .part .say")?.checkVisibility());
  const open = await steps.offered(page);
  assert.deepEqual(
    open.fields.map((field) => field.name),
    [],
    `still open: "${await page.text("#questions-panel .parts")}" (${before})`,
  );
  await steps.press_button(page);
  await page.until((asked) => document.getElementById("question-ask").innerText.replace(/\s+/g, " ").trim() !== asked, before);
}

test(`this is ${NAME}`, async () => {
  const browser = await start();
  const agent = await (await browser.open()).run(() => navigator.userAgent);
  assert.match(agent.toLowerCase(), NAME === "firefox" ? /firefox/ : /chrom/);
  await browser.close();
});
