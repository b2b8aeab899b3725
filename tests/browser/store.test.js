// Where the work is kept: refused, erased, opened in two tabs, closed by its group.

import assert from "node:assert/strict";
import { test } from "node:test";
import { NAME, start } from "./browser.js";
import * as steps from "./steps.js";

test("a browser that keeps nothing says so at once, with the file as the way out", { timeout: 120_000 }, async () => {
  const browser = await start({ refuse_storage: true });
  const page = await browser.open();
  await steps.open_example(page, "layered-summer");
  await page.until(() => document.getElementById("bar-not-kept").checkVisibility());
  await page.until(() => document.getElementById("notice-kept").checkVisibility());
  await page.run(() => document.getElementById("notice-kept-save").click());
  assert.ok(await browser.saved(".json"));
  await page.until(() => !document.getElementById("notice-kept").checkVisibility());
  assert.ok(await page.run(() => document.getElementById("bar-not-kept").checkVisibility()), "the bar still says it");
  await steps.to_profile(page);
  await browser.close();
});

test("a store that is emptied in the middle of the work is noticed", { timeout: 120_000 }, async () => {
  const browser = await start();
  const page = await browser.open();
  await steps.open_example(page, "layered-summer");
  await page.kept();
  await page.run(async () => {
    localStorage.clear();
    for (const { name } of await indexedDB.databases()) {
      const base = await new Promise((done) => (indexedDB.open(name).onsuccess = (event) => done(event.target.result)));
      const all = base.transaction([...base.objectStoreNames], "readwrite");
      for (const store of base.objectStoreNames) all.objectStore(store).clear();
      await new Promise((done) => (all.oncomplete = done));
      base.close();
    }
  });
  await page.inner.focus("#log-water");
  await page.type("Quillet Pond");
  await page.until(() => document.getElementById("notice-kept").checkVisibility());
  await browser.close();
});

test("a notebook has one owner tab; the other looks, or takes over", { timeout: 120_000 }, async () => {
  const browser = await start();
  const first = await browser.open();
  await steps.open_example(first, "layered-summer");
  await first.inner.focus("#log-water");
  await first.type("Quillet");
  await first.kept();
  const second = await browser.open();
  await second.until(() => document.getElementById("other-tab").checkVisibility());
  await second.inner.bringToFront();
  await second.run(() => document.getElementById("other-work").click());
  await second.until(() => !document.getElementById("other-tab").checkVisibility());
  await second.inner.focus("#log-water");
  await second.press("End");
  await second.type(" Pond");
  await second.sees("#bar-who", "Quillet Pond");
  await first.inner.bringToFront();
  await first.until(() => document.getElementById("other-tab").checkVisibility());
  await browser.close();
});

test("a closed notebook shows its code alone; erased it is gone", { timeout: 120_000 }, async () => {
  const browser = await start();
  const page = await browser.open();
  await steps.open_example(page, "layered-summer");
  await page.inner.focus("#log-water");
  await page.type("Quillet Pond");
  await page.kept();
  await page.push("#bar-water");
  const code = await page.text("#notebooks-list b");
  await page.push("#notebooks-new");
  await page.until(() => document.getElementById("log-empty").checkVisibility());
  const html = await page.run(() => document.getElementById("app").outerHTML);
  assert.ok(!html.includes("Quillet"), "nothing of the closed notebook stands on the page");
  if (!(await page.run(() => document.getElementById("menu-notebooks").checkVisibility()))) await page.push("#bar-water");
  await page.sees("#notebooks-list", code);
  await page.push("#notebooks-list button");
  await page.until(() => document.getElementById("notebooks-open-ask").checkVisibility());
  await page.push("#notebooks-open-yes");
  await page.sees("#bar-who", "Quillet Pond");
  await page.push("#bar-water");
  await page.push("#notebooks-erase");
  await page.push("#notebooks-erase-yes");
  await page.until(() => document.getElementById("log-empty").checkVisibility());
  const kept = await page.run(async () => {
    const names = Object.values(localStorage).join(" ");
    const found = [];
    for (const { name } of await indexedDB.databases()) {
      const base = await new Promise((done) => (indexedDB.open(name).onsuccess = (event) => done(event.target.result)));
      for (const store of base.objectStoreNames) {
        const all = base.transaction(store).objectStore(store).getAll();
        found.push(JSON.stringify(await new Promise((done) => (all.onsuccess = () => done(all.result)))));
      }
      base.close();
    }
    return names + found.join(" ");
  });
  assert.ok(!kept.includes("Quillet"), "nothing is left in the store");
  await browser.close();
});

test("the fields are left alone by autofill and spelling services", async () => {
  const browser = await start();
  const page = await browser.open();
  const open = await page.run(() => {
    const templates = [...document.querySelectorAll("template")].flatMap((one) => [...one.content.querySelectorAll("input[type=text], textarea")]);
    const fields = [...document.querySelectorAll("input[type=text], textarea"), ...templates];
    return fields.filter((one) => one.getAttribute("autocomplete") !== "off" || one.getAttribute("spellcheck") !== "false").map((one) => one.outerHTML);
  });
  assert.deepEqual(open, []);
  await browser.close();
});

test("the policy of the page forbids every connection", async () => {
  const browser = await start();
  const page = await browser.open();
  const policy = await page.run(() => document.querySelector('meta[http-equiv="Content-Security-Policy"]').content);
  assert.match(policy, /default-src 'none'/);
  assert.doesNotMatch(policy, /connect-src|https?:|\*|unsafe-inline|'unsafe-eval'/);
  const refused = await page.run(() =>
    fetch("http://127.0.0.1:9/").then(
      () => "went out",
      () => "refused",
    ),
  );
  assert.equal(refused, "refused");
  assert.ok(page.faults.length > 0 || NAME === "firefox", "the browser said that the policy refused it");
  await browser.close();
});
