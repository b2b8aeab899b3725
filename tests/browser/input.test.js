// What does not belong here: files that are no table, numbers that are none, far too much of everything. The page answers
// in words, stays quick, keeps what was typed, and runs nothing that stands in a text.

import assert from "node:assert/strict";
import { test } from "node:test";
import { rows, with_files } from "./on_disk.js";
import * as steps from "./steps.js";

// How long the page was without a sign of life is printed, not asserted: it depends on the machine. The aim is a second.

const FILES = {
  "a picture.csv": Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]),
  "empty.csv": "",
  "a web page.csv": "<!doctype html><html><body><h1>Pond</h1><script>alert(1)</script><p>No table here.</p></body></html>",
  "one reading.csv": "Depth (m),Temp (°C)\n0,18.2\n",
  "all depths equal.csv": `Depth (m),Temp (°C)\n${rows(12, (i) => `2.0,${18 + i / 10}`)}\n`,
  "a million columns.csv": `Depth${",x".repeat(1_000_000)}\n0${",1".repeat(1_000_000)}\n`,
  "1e308.csv": "Depth (m),Temp (°C)\n0,1e308\n1,-1e308\n1e308,9\n2,18\n3,17\n4,16\n",
  "not numbers.csv": "Depth (m),Temp (°C)\n0,NaN\n1,Infinity\n2,-inf\n3,nan\n4,-\n",
  "ten thousand at one depth.csv": `Depth (m),Temp (°C)\n0,18\n1,17\n${rows(10_000, (i) => `2.0,${15 + (i % 10) / 10}`)}\n3,12\n4,10\n`,
  "thirty thousand.csv": `Depth (m),Temp (°C)\n${rows(30_000, (i) => `${i / 1000},${(20 - i / 10_000).toFixed(2)}`)}\n`,
  "larger than 20 MB.csv": Buffer.alloc(20_000_001, "1,2\n"),
  "2 MB of the same row.csv": Buffer.alloc(2_000_000, "1,2\n"),
  "half a notebook.json": '{"schema":"layercast-notebook","version":1,"code":"C-4T7K","cast":{"schema":"lay',
  "a newer notebook.json": '{"schema":"layercast-notebook","version":9,"code":"C-4T7K","news":[1,2,3]}',
};

const tools = with_files(FILES);

/** The page in a store of its own. */
async function opened() {
  const page = await tools.browser.apart();
  page.hurry = true;
  page.patience_ms = 120_000;
  await page.go();
  return page;
}

for (const name of Object.keys(FILES)) {
  test(`${name}: answered in words`, { timeout: 240_000 }, async (t) => {
    const page = await opened();
    try {
      // Something is there already, and must be there afterwards.
      await page.inner.focus("#log-water");
      await page.run(() => {
        window.longest = 0;
        const busy = document.getElementById("busy");
        let last = performance.now();
        let seen = false;
        setInterval(() => {
          const now = performance.now();
          if (!seen && !busy.checkVisibility()) window.longest = Math.max(window.longest, now - last);
          last = now;
          seen = busy.checkVisibility();
        }, 10);
        new MutationObserver(() => {
          if (!busy.hidden) seen = true;
        }).observe(busy, { attributes: true });
      });
      const before = await page.text("#app");
      await page.give_file("#file-field", tools.folder.file(name));
      await page.until((was) => {
        const now = document.getElementById("app").innerText.replace(/\s+/g, " ").trim();
        return now !== was && !document.getElementById("busy").checkVisibility();
      }, before);
      await page.run(() => new Promise((done) => setTimeout(done, 300)));
      const said = await page.text("#screen-log");
      assert.ok(said.length > 20, said);
      assert.doesNotMatch(said, /undefined|NaN\b.*NaN|\[object|null\b|\berror\b|\binvalid\b/i);
      t.diagnostic(`longest without a sign of life: ${Math.round(await page.run(() => window.longest))} ms`);
      assert.deepEqual(page.faults, []);
      // And the work goes on.
      await page.run(() => document.querySelector("#bar-help").click());
      assert.ok(await page.run(() => document.getElementById("menu-help").checkVisibility()));
    } finally {
      await page.close();
    }
  });
}

test("readings typed in °F are asked about once, read so, and taken back", { timeout: 120_000 }, async () => {
  const page = await opened();
  page.hurry = false;
  const cells = () => page.run(() => [...document.querySelectorAll('#log-rows [data-col="down"]')].map((cell) => cell.value));
  const heads = () => page.run(() => [...document.querySelectorAll("#log-table th .unit")].map((unit) => unit.textContent));
  const typed = ["74.3", "73.6", "63.9", "50.4"];
  await page.push("#log-type");
  for (const text of typed) {
    await page.type(text);
    await page.press("Enter");
  }
  await page.sees("#log-title", "Are these °F?");
  await page.sees("#log-doubt-0", "Most of these look like °F.");
  assert.equal(await page.run(() => document.querySelectorAll("#log-doubts .doubt").length), 5);
  await page.push("#log-doubt-0 button:first-of-type");
  await page.until(() => document.querySelectorAll("#log-doubts .doubt").length === 0);
  await page.sees("#log-settled", "All temperatures, read as °F");
  assert.deepEqual((await cells()).slice(0, 4), typed, "what was written stays");
  assert.deepEqual(await heads(), ["m", "°F", "°F", "°C"]);
  await page.tab_to("#log-undo");
  assert.equal(await page.text("#log-undo"), "Undo reading as °F");
  await page.press("Enter");
  await page.sees("#log-doubt-0", "Most of these look like °F.");
  assert.deepEqual((await cells()).slice(0, 4), typed);
  assert.deepEqual(await heads(), ["m", "°C", "°C", "°C"]);
  // The second way leaves the single doubts as they are.
  await page.push("#log-doubt-0 button:nth-of-type(2)");
  await page.until(() => document.querySelectorAll("#log-doubts .doubt").length === 4);
  await page.sees("#log-doubts", "Lake water is never 74.3 °C");
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("no text becomes markup or a formula", { timeout: 120_000 }, async () => {
  const nasty = '<img src=x onerror="document.title=\'run\'"><b>x</b>';
  const page = await opened();
  await steps.paste(page, `Depth (m)\tDown\tUp\n0\t18\t18\n1\t${nasty}\t17\n2\t=1+1\t16\n3\t@SUM(A1)\t14\n4\t{ $depth }\t12\n5\t11\t11\n`);
  await page.until(() => document.getElementById("log-main").checkVisibility() || document.getElementById("log-pending").checkVisibility());
  await page.inner.focus("#log-water");
  await page.type(nasty);
  await page.inner.focus("#log-group");
  await page.type("<b>C");
  await page.run(() => document.querySelector('[data-go="questions"]').click());
  const state = await page.run(() => ({
    title: document.title,
    images: document.querySelectorAll("#app img, #app script").length,
    bar: document.getElementById("bar-who").textContent,
  }));
  assert.equal(state.images, 0);
  assert.doesNotMatch(state.title, /^run/);
  assert.match(state.bar, /<img src=x/);
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("a stop of the calculation is said, and the work goes on", { timeout: 120_000 }, async () => {
  const page = await tools.browser.apart();
  page.hurry = true;
  // As a panic looks from outside: the next call that changes a notebook ends in a RuntimeError.
  await page.inner.evaluateOnNewDocument(() => {
    const real = WebAssembly.instantiate;
    WebAssembly.instantiate = async (...args) => {
      const made = await real(...args);
      const exports = { ...made.exports };
      exports.step = (...values) => {
        if (window.stop_next) {
          window.stop_next = false;
          throw new WebAssembly.RuntimeError("unreachable");
        }
        return made.exports.step(...values);
      };
      return Object.create(WebAssembly.Instance.prototype, { exports: { value: exports } });
    };
  });
  await page.go();
  await steps.open_example(page, "layered-summer");
  await page.run(() => {
    window.stop_next = true;
  });
  await page.inner.focus("#log-water");
  await page.type("Qu");
  await page.until(() => document.getElementById("notice-stopped").checkVisibility());
  await page.type("illet");
  await page.sees("#bar-who", "uillet");
  const cells = await page.run(() => document.querySelector('#log-rows [data-col="down"]').value);
  assert.equal(cells, "23.4");
  await page.close();
});
