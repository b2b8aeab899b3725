// The teacher's way, on the files of `hand_ins/`: eight groups, a zip, a renamed copy, an older copy, a lost seat, feet and °F, a
// shallower place, another class, a file that is cut off; from the empty screen to the marks in a file. Presses are counted.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { start } from "./browser.js";
import { STATES } from "./states.js";
import * as steps from "./steps.js";

/** Job row C: marks exported in so many presses. */
const MOST_PRESSES = 25;

/** Everything the page has in its stores, as one text. */
function kept(page) {
  return page.run(async () => {
    const open = indexedDB.open("layercast");
    const store = await new Promise((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = store.transaction("records").objectStore("records").getAll();
    return new Promise((done) => {
      all.onsuccess = () => done(JSON.stringify(all.result) + JSON.stringify(localStorage));
    });
  });
}

let browser;
before(async () => {
  browser = await start();
});
after(() => browser.close());

test("from eight hand-ins with their troubles to the marks, in few presses", { timeout: 120_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await page.go();
  let presses = 0;
  const press = async (selector) => {
    presses += 1;
    await page.until((what) => document.querySelector(what)?.checkVisibility(), selector);
    await page.run((what) => document.querySelector(what).click(), selector);
  };
  // To Class, and one drop of everything.
  presses += 2;
  await steps.drop_hand_ins(page);
  await page.sees('#class-panel [data-view="add"] [data-part="counts"]', "Of 11: 4 new, 1 same again, 1 newer, 4 to look at, 1 not for this class.");
  // By its file, so that no two outcomes can change places.
  const rows = await page.run(() =>
    [...document.querySelectorAll('#class-panel [data-view="add"] tbody tr')].map((row) => {
      const said = (part) => row.querySelector(`[data-part="${part}"]`).innerText.trim();
      return `${said("name")}: ${said("outcome")}`;
    }),
  );
  assert.deepEqual(rows, [
    "D.json: needs a look",
    "F.json: needs a look",
    "G.json: needs a look",
    "H of 9c.json: not for this class",
    "copy of e.json: new",
    "cut off.json: needs a look",
    "e renamed.json: same again",
    "from the platform.zip/Group B (2).json: new",
    "from the platform.zip/group c final.json: new",
    "hand-in (1).json: new",
    "hand-in.json: newer than the one here",
  ]);

  await press('#class-panel [data-view="add"] [data-part="to-sheets"]');
  const way = async (words) => {
    presses += 1;
    await page.run((text) => {
      const buttons = [...document.querySelectorAll('#class-panel [data-view="sheets"] [data-part="looks"] button')];
      buttons.find((one) => one.textContent.trim() === text).click();
    }, words);
  };
  await way("Read as feet");
  await way("Read as °F");
  await way("Another place");
  // The lost seat: its sheet, its code.
  presses += 1;
  await page.run(() => {
    const row = [...document.querySelectorAll('#class-panel [data-view="sheets"] [data-part="rows"] tr')].find((one) => one.innerText.includes("G"));
    row.querySelector("button").click();
  });
  await page.until(() => document.getElementById("class-seat").checkVisibility());
  presses += 1;
  await page.run(() => {
    const seat = document.getElementById("class-seat");
    seat.value = "07";
    seat.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await press('#class-panel [data-view="seat"] [data-part="to-sheets"]');
  const looks = await page.run(() => document.querySelectorAll('#class-panel [data-view="sheets"] [data-part="looks"] .doubt').length);
  assert.equal(looks, 0, "everything has been looked at");
  await press('#class-panel [data-view="sheets"] [data-part="to-list"]');

  // The picture has seven cores, and one sentence.
  const { casts, sentence, canvas } = await page.run(() => ({
    casts: document.querySelectorAll('#class-panel [data-part="casts"] tr').length,
    sentence: document.querySelector('#class-panel [data-view="list"] [data-part="sentence"]').innerText,
    canvas: document.querySelector("#class-picture canvas").width,
  }));
  assert.equal(casts, 7);
  assert.match(sentence, /share|overlap/);
  assert.ok(canvas > 500);

  await press('#class-panel [data-view="list"] [data-part="to-marks"]');
  await page.keep_saved();
  await page.run(() => {
    document.getElementById("class-students").value = "01\tKim\n07\tSasha";
  });
  await press('#class-panel [data-view="marks"] [data-part="wide"]');
  const csv = await page.until(() => window.saved);
  console.log(`marks exported after ${presses} presses`);
  assert.ok(presses <= MOST_PRESSES, `${presses} presses`);
  const lines = csv.trim().split(/\r?\n/);
  assert.equal(lines.length, 8, csv);
  assert.match(csv, /Kim/);
  // The list of students stays nowhere.
  const store = await kept(page);
  assert.ok(!store.includes("Sasha") && store.includes("layercast-class"));
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("a saved class opens again with its marks: into an empty one at once, over another after a question", { timeout: 120_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await page.go();
  await steps.drop_hand_ins(page);
  await page.sees('#class-panel [data-view="add"] [data-part="counts"]', "Of 11");
  const click = (selector) => page.run((what) => document.querySelector(what).click(), selector);
  const list = '#class-panel [data-view="list"]';
  const marks = '#class-panel [data-view="marks"]';
  const groups = () => page.run(() => [...document.querySelectorAll('#class-panel [data-part="casts"] tr')].map((row) => row.innerText));
  const drop = (text, name) =>
    page.run(
      (text, name) => {
        const dropped = new DataTransfer();
        dropped.items.add(new File([text], name));
        dispatchEvent(new DragEvent("drop", { dataTransfer: dropped, bubbles: true, cancelable: true }));
      },
      text,
      name,
    );
  await click('#class-panel [data-view="add"] [data-part="to-sheets"]');
  await page.run(() => [...document.querySelectorAll('#class-panel [data-part="looks"] button')].find((one) => one.textContent.trim() === "Read as feet").click());
  await click('#class-panel [data-view="sheets"] [data-part="to-list"]');
  const before = await groups();
  assert.equal(before.length, 7);
  await page.keep_saved();
  await click(`${list} [data-part="to-marks"]`);
  await click(`${marks} [data-part="save-class"]`);
  const saved = await page.until(() => window.saved);
  await page.run(() => (document.getElementById("class-students").value = "01\tKim"));
  await click(`${marks} [data-part="new-class"]`);
  await click(`${marks} [data-part="new-yes"]`);
  assert.equal(await page.run(() => document.getElementById("class-students").value), "", "a new class forgets the names");
  await page.until(() => document.querySelectorAll('#class-panel [data-part="casts"] tr').length === 0);
  const anywhere = () => page.run(() => [document.getElementById("app").innerHTML, ...[...document.querySelectorAll("input, textarea")].map((one) => one.value)].join("\n"));
  assert.ok(!(await anywhere()).includes("Kim"), "a name is on the page");
  assert.ok(!(await kept(page)).includes("Kim"), "a name is in the store");

  // Into an empty class, from another screen, whatever the file is called.
  await steps.go(page, "log");
  await drop(saved, "renamed.txt");
  await page.until(() => document.querySelectorAll('#class-panel [data-part="casts"] tr').length === 7);
  assert.deepEqual(await groups(), before, "the repairs came with it");

  // Over another one it asks; the one that is open stays until then.
  const other = JSON.parse(saved);
  other.now.members = other.now.members.slice(0, 1);
  await drop(JSON.stringify(other), "other.json");
  await page.sees(`${list} [data-part="offered-holds"]`, "with one sheet");
  assert.equal(await page.run(() => document.activeElement.dataset.part), "offered-no");
  await page.inner.keyboard.press("Enter");
  assert.deepEqual(await groups(), before);
  await drop(JSON.stringify(other), "other.json");
  await page.sees(`${list} [data-part="offered-holds"]`, "with one sheet");
  await click(`${list} [data-part="offered-yes"]`);
  await page.until(() => document.querySelectorAll('#class-panel [data-part="casts"] tr').length === 1);

  // A newer one is not opened, and says so.
  await drop(saved.replace('"version":', '"version":9'), "newer.json");
  await page.sees('#class-panel [data-view="add"] [data-part="rows"]', "newer Layercast");
  assert.deepEqual(page.faults, []);
  await page.close();
});

/** Markup and a formula, in a text that a student wrote. */
const WILD = "<img src=x onerror=alert(1)> =1+1";

test("words get their level, comments are used again, and feedback goes back", { timeout: 120_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.go(page, "class");
  await steps.drop(page, [steps.hand_in_with_report(WILD)]);
  await page.push('#class-panel [data-view="add"] [data-part="to-sheets"]');
  await page.push('#class-panel [data-view="sheets"] [data-part="rows"] button');
  const seat = '#class-panel [data-view="seat"]';
  await page.sees(`${seat} [data-part="answers"]`, WILD);
  // What is right on this sheet's water stands beside each answer.
  await page.sees(`${seat} .card:first-child [data-part="told"]`, "Right: ");
  const set = (part, at, value) =>
    page.run(
      (selector, at, value) => {
        const field = document.querySelectorAll(selector)[at];
        field.value = value;
        field.dispatchEvent(new Event("change", { bubbles: true }));
      },
      `${seat} .card:last-child [data-part="${part}"]`,
      at,
      value,
    );
  const points = () => page.run((selector) => document.querySelector(selector).value, `${seat} .card:last-child [data-part="points"]`);
  const levels = await page.run((selector) => document.querySelectorAll(selector).length, `${seat} .card:last-child [data-part="level"]`);
  assert.equal(levels, 3, "claim, evidence, reasoning");
  await set("level", 0, "3");
  await set("level", 1, "2");
  assert.equal(await points(), "0", "one level is not there yet");
  await set("level", 2, "1");
  // Four points × (3 + 2 + 1) ÷ 9.
  assert.equal(await points(), "2.67");
  await set("points", 0, "lots");
  await page.sees(`${seat} .card:last-child`, "is not a number of points: 2.67 stay");
  assert.equal(await points(), "2.67");
  await set("points", 0, "3.5");
  await set("why", 0, "said it aloud");
  await page.sees(`${seat} .card:last-child`, "given by you");
  await set("comment", 0, "Look up.");
  await set("bank", 0, "Say by which rule.");
  const comment = await page.run((selector) => document.querySelector(selector).value, `${seat} .card:last-child [data-part="comment"]`);
  assert.equal(comment, "Look up. Say by which rule.");
  await page.push(`${seat} .card:last-child [data-part="keep"]`);
  await page.sees(`${seat} [data-part="kept"]`, "Look up. Say by which rule.");
  // Escape goes back, to what opened each.
  const focus = () => page.run(() => document.activeElement.closest("[data-view]").dataset.view + " " + document.activeElement.dataset.part);
  await page.press("Escape");
  assert.equal(await focus(), "sheets group");
  await page.press("Escape");
  assert.equal(await focus(), "list to-sheets");
  await page.push('#class-panel [data-part="to-marks"]');

  await page.push('#class-panel [data-part="slips-zip"]');
  await page.sees('#class-panel [data-part="saved"]', "one sheet");
  const zip = readFileSync(await browser.saved("-feedback.zip"));
  assert.equal(zip.subarray(0, 4).toString("latin1"), "PK\u0003\u0004");
  assert.equal(zip.readUInt16LE(zip.length - 12), 1, "a file for the one seat");
  await page.push('#class-panel [data-part="slips-file"]');
  const file = await browser.saved("-feedback.html");
  assert.deepEqual(page.faults, []);
  await page.inner.close();

  // A student opens it by itself.
  const alone = await browser.tab();
  await alone.inner.goto(pathToFileURL(file).href, { waitUntil: "load" });
  await alone.sees("article", WILD);
  await alone.sees("article", "3.50 of 4");
  await alone.sees("article", "What did you find? 3: all of it");
  await alone.sees("article", "Which of your readings show it? 2: most of it");
  await alone.sees("article", "said it aloud · Look up. Say by which rule.");
  assert.equal(await alone.run(() => document.querySelectorAll("img, script").length), 0);
  assert.deepEqual(alone.faults, []);
  await alone.inner.close();
});

test("the wall goes from step to step, says last why two differ, and never shows the notes", { timeout: 120_000 }, async () => {
  const page = await browser.apart();
  page.hurry = true;
  await page.go();
  await STATES["class-why"](page);
  const why = await page.text('#class-panel [data-view="why"] [data-part="said"]');
  // Against one other the time between can be given; what is no time is said.
  const panel = '#class-panel [data-view="why"]';
  const choose = (id, value) =>
    page.run(
      (id, value) => {
        const field = document.getElementById(id);
        field.value = value ?? field.options[1].value;
        field.dispatchEvent(new Event("change", { bubbles: true }));
      },
      id,
      value,
    );
  assert.ok(!(await page.run((clock) => document.querySelector(clock).checkVisibility(), `${panel} [data-part="clock"]`)));
  await choose("class-other", null);
  await page.until((clock) => document.querySelector(clock).checkVisibility(), `${panel} [data-part="clock"]`);
  await choose("class-minutes", "soon");
  await page.sees(`${panel} [data-part="said"]`, "“soon” is not a number of minutes");
  await choose("class-when", "earlier");
  await choose("class-minutes", "1");
  await page.sees(`${panel} [data-part="said"]`, "W/m²");
  await choose("class-minutes", "");
  await choose("class-other", "");
  await page.until((panel, why) => document.querySelector(panel).innerText.replace(/\s+/g, " ").includes(why.slice(0, 40)), `${panel} [data-part="said"]`, why);
  await page.push('#class-panel [data-view="why"] [data-part="to-list"]');
  await page.push('#class-panel [data-part="to-notes"]');
  const notes = await page.run(() =>
    [...document.querySelectorAll('#class-panel [data-part="steps"] > li')].map((one) => one.innerText.split("\n").filter((line) => line !== "")),
  );
  // What was read, the layers, the middle, why: nobody guessed or marked here.
  assert.equal(notes.length, 4);
  assert.ok(notes.every((one) => one.length > 1));
  await page.push('#class-panel [data-view="notes"] [data-part="to-list"]');
  await page.run(() => document.querySelector('#class-panel [data-part="parts"] [data-of="curves"]').click());
  await page.push('#class-panel [data-part="wall"]');
  const said = [];
  for (let at = 0; at < notes.length; at += 1) {
    said.push(await page.text("#class-wall-said"));
    await page.press("ArrowRight");
  }
  assert.deepEqual(
    said.map((one) => one.slice(0, 20)),
    notes.map((one) => one[0].slice(0, 20)),
  );
  const [pair, ...short] = said.at(-1).split(". ");
  assert.equal(pair, "A and the rest");
  assert.ok(short.length > 0 && why.includes(short.join(". ")), `${said.at(-1)} / ${why}`);
  // Among the curves a letter lights its group, and lets it go again.
  await page.press("ArrowLeft", "ArrowLeft", "ArrowLeft");
  assert.equal(await page.text("#class-wall-said"), said[0]);
  const drawn = () => page.run(() => document.querySelector("#class-picture canvas").toDataURL());
  const plain = await drawn();
  await page.press("c");
  const lit = await drawn();
  assert.notEqual(lit, plain);
  await page.press("C");
  assert.equal(await drawn(), plain);
  await page.press("ArrowRight", "ArrowRight", "ArrowRight");
  const seen = await page.text("body");
  assert.ok(!seen.includes(notes[0][1]), "a note is on the wall");
  await page.press("b");
  assert.equal(await page.run(() => document.getElementById("class-blank").checkVisibility()), true);
  await page.press(".", "Escape");
  await page.until(() => document.getElementById("class-panel").checkVisibility());
  // What the wall had lit is not lit beside the list.
  assert.equal(await page.run(() => document.querySelectorAll('#class-panel [data-part="casts"] [aria-pressed="true"]').length), 0);
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("a lesson with an unfinished question of one's own is not saved, and points that are none are said", { timeout: 60_000 }, async () => {
  const page = await browser.open();
  page.hurry = true;
  await steps.go(page, "class");
  await page.push('#class-panel [data-part="to-lesson"]');
  await page.push('#class-panel [data-part="add-own"]');
  await page.push('#class-panel [data-part="save-lesson"]');
  await page.sees('#class-panel [data-view="lesson"] [data-part="said"]', "Not saved yet. Question 9: Write the question.");
  assert.equal(await page.run(() => document.activeElement.dataset.part), "ask");
  await page.run(() => {
    const field = document.querySelector('#class-panel [data-part="taken"] [data-part="points"]');
    field.value = "many";
    for (const type of ["input", "change"]) field.dispatchEvent(new Event(type, { bubbles: true }));
  });
  await page.sees('#class-panel [data-view="lesson"] [data-part="said"]', "“many” is not a whole number from 0 to 100.");
  assert.equal(await page.run(() => document.querySelector('#class-panel [data-part="taken"] [data-part="points"]').value), "4");
  assert.deepEqual(page.faults, []);
  await page.inner.close();
});
