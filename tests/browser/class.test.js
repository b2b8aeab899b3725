// The teacher's way, on the files of `hand_ins/`: eight groups, a zip, a renamed copy, an older copy, a lost seat, feet and °F, a
// shallower place, another class, a file that is cut off; from the empty screen to the marks in a file. Presses are counted.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

/** Job row C: marks exported in so many presses. */
const MOST_PRESSES = 25;

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
  await page.sees('#class-panel [data-view="add"] [data-part="counts"]', "Of 11: 4 new, 1 same again, 1 newer than, 4 to look at, 1 not ours.");
  const rows = await page.run(() => document.querySelectorAll('#class-panel [data-view="add"] tbody tr').length);
  assert.equal(rows, 11);

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
  await page.run(() => {
    const real = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
      void blob.text().then((text) => {
        window.saved = text;
      });
      return real.call(URL, blob);
    };
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
  const kept = await page.run(async () => {
    const open = indexedDB.open("layercast");
    const store = await new Promise((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = store.transaction("records").objectStore("records").getAll();
    return new Promise((done) => {
      all.onsuccess = () => done(JSON.stringify(all.result) + JSON.stringify(localStorage));
    });
  });
  assert.ok(!kept.includes("Sasha") && kept.includes("layercast-class"));
  assert.deepEqual(page.faults, []);
  await page.close();
});
