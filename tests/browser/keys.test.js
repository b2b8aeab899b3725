// By keyboard: short ways, a focus that is always somewhere and can be seen, menus that close behind it, and the group's
// letter in the code.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { start } from "./browser.js";
import * as steps from "./steps.js";

let browser;
before(async () => {
  browser = await start({ height: 600 });
});
after(() => browser.close());

async function opened() {
  const page = await browser.apart();
  await page.go();
  return page;
}

/** What has the focus, whether its ring is drawn, and whether it is one thing of the page rather than a whole panel. */
function focus(page) {
  return page.run(() => {
    const at = document.activeElement;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    return {
      what: at.id || at.dataset.part || at.dataset.field || at.tagName,
      ring: outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2,
      whole: at === document.body || at.matches("[data-panel]"),
    };
  });
}

async function seen(page) {
  const at = await focus(page);
  assert.ok(at.ring && !at.whole, JSON.stringify(at));
}

test("from the first cell to any example it is a few Tabs", async () => {
  const page = await opened();
  await page.until(() => document.activeElement?.matches("#log-rows input"));
  let tabs = 0;
  while (!(await page.run(() => document.activeElement.dataset.example === "under-ice"))) {
    await page.press("Tab");
    tabs += 1;
    assert.ok(tabs <= 10, `${tabs} Tabs`);
    await seen(page);
  }
  await page.press("Shift+Tab");
  assert.equal(await page.run(() => document.activeElement.dataset.example), "mixed-autumn");
  await page.close();
});

test("Esc leaves the table, and Tab leads through one row of it", async () => {
  const page = await opened();
  await page.press("ArrowDown", "ArrowDown", "Escape");
  await page.until(() => document.activeElement.closest("#log-panel") !== null);
  await seen(page);
  await page.press("Shift+Tab", "Shift+Tab");
  const row = await page.run(() => [...document.querySelectorAll("#log-rows tr")].indexOf(document.activeElement.closest("tr")));
  assert.equal(row, 2, "back in the row that was left");
  await page.close();
});

test("after a change of screen the focus stands on one thing, and is seen", async () => {
  const page = await opened();
  await page.push('.link[data-example="layered-summer"]');
  await page.until(() => document.getElementById("log-main").checkVisibility());
  await page.until(() => document.activeElement.id === "log-profile");
  await page.press("Enter");
  await page.until(() => document.activeElement.closest("#profile-panel") !== null);
  await seen(page);
  assert.equal((await focus(page)).what, "title");
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await steps.check_marks(page);
  await seen(page);
  await page.push('#profile-panel .found-panel [data-part="to-questions"]');
  await page.until(() => document.activeElement.closest("#questions-panel") !== null);
  await seen(page);
  await page.close();
});

for (const [name, button, menu] of [
  ["Notebooks", "bar-water", "menu-notebooks"],
  ["View", "bar-view", "menu-view"],
  ["Help", "bar-help", "menu-help"],
]) {
  test(`${name}: closes behind the focus, and Esc gives it back`, async () => {
    const page = await opened();
    await page.push(`#${button}`);
    await page.until((id) => document.getElementById(id).contains(document.activeElement), menu);
    await page.press("Escape");
    assert.equal((await focus(page)).what, button);
    assert.equal(await page.run((id) => document.getElementById(id).hidden, menu), true);
    await page.press("Enter");
    for (let tabs = 0; tabs < 12; tabs += 1) {
      await page.press("Tab");
      if (!(await page.run((id) => document.getElementById(id).contains(document.activeElement), menu))) break;
    }
    assert.equal(await page.run((id) => document.getElementById(id).hidden, menu), true, "left by Tab");
    await page.push(`#${button}`);
    await page.until((id) => document.getElementById(id).contains(document.activeElement), menu);
    const inside = (b, m) => document.activeElement.id === b || document.getElementById(m).contains(document.activeElement);
    for (let tabs = 0; tabs < 6 && (await page.run(inside, button, menu)); tabs += 1) await page.press("Shift+Tab");
    assert.equal(await page.run((id) => document.getElementById(id).hidden, menu), true, "left by Shift+Tab");
    await page.close();
  });
}

test("in a low window no field lies under the buttons that stay in sight, and a wrong unit gets the focus", async () => {
  const page = await opened();
  page.hurry = true;
  await steps.open_example(page, "layered-summer");
  await steps.to_profile(page);
  await steps.place_marks(page, ["2.5", "4", "6.5"]);
  await page.inner.setViewport({ width: 1366, height: 430 });
  await steps.go(page, "questions");
  // The fifth: three parts, four fields.
  await steps.go_to_question(page, 5);
  await page.tab_to('#questions-panel [data-field="temp"]');
  const covered = () =>
    page.run(() => {
      const at = document.activeElement.getBoundingClientRect();
      const acts = document.querySelector('#questions-panel .question > [data-part="acts"]').getBoundingClientRect();
      const panel = document.getElementById("questions-panel").getBoundingClientRect();
      return { sticky: acts.bottom <= panel.bottom + 1, inside: at.top >= panel.top - 1, above: at.bottom <= acts.top + 1 };
    });
  for (const field of ["temp", "from", "to", "depth", ""]) {
    if (field) assert.equal(await page.run(() => document.activeElement.dataset.field), field);
    else assert.equal(await page.run(() => document.activeElement.id), "question-reason");
    assert.deepEqual(await covered(), { sticky: true, inside: true, above: true }, field);
    await page.press("Tab");
  }
  // A right number with a wrong unit: the unit has the focus.
  await steps.go_to_question(page, 2);
  await steps.answer(page, { drop: "4.05", unit: "m" });
  await steps.press_button(page);
  await page.until(() => document.activeElement.dataset.field === "unit");
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("how it is computed: a list to jump by, nothing of the work within reach, and Esc or its button gives the focus back", async () => {
  const page = await opened();
  for (const way_back of ["Escape", "button"]) {
    await page.push("#bar-help");
    await page.push("#help-how");
    assert.equal((await focus(page)).what, "how-title");
    await seen(page);
    const titles = await page.run(() => [...document.querySelectorAll("#how-words h2")].map((title) => title.textContent));
    const list = await page.run(() => [...document.querySelectorAll("#how-list button")].map((way) => way.textContent));
    assert.ok(titles.length > 10);
    assert.deepEqual(list, titles);
    await page.hand("0\t20\n1\t19\n");
    await page.push("#how-list li:last-child button");
    await seen(page);
    const at = await page.run(() => [document.activeElement.textContent, document.activeElement.getBoundingClientRect().top]);
    assert.equal(at[0], titles.at(-1));
    assert.ok(at[1] >= 0 && at[1] < 300, `${at[1]} px`);
    // From here back around: every stop is of this page.
    for (let tabs = 0; tabs < 3; tabs += 1) {
      await page.press("Shift+Tab");
      assert.equal(await page.run(() => document.activeElement === document.body || document.activeElement.closest("#how") !== null), true);
    }
    if (way_back === "Escape") await page.press("Escape");
    else await page.push("#how-back");
    assert.equal((await focus(page)).what, "bar-help");
    assert.equal(await page.run(() => document.getElementById("how").checkVisibility()), false);
  }
  assert.equal(await page.run(() => [...document.querySelectorAll("#log-rows input")].every((cell) => cell.dataset.col === "depth" || cell.value === "")), true, "a table pasted over it stays out");
  assert.deepEqual(page.faults, []);
  await page.close();
});

test("every door of what was found is reached in every theme", { timeout: 300_000 }, async () => {
  const page = await opened();
  await steps.open_example(page, "layered-summer");
  await steps.to_profile(page);
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await steps.check_marks(page);
  for (const theme of ["day", "night", "sunlight", "projector"]) {
    await steps.choose_in_view(page, "theme", theme);
    for (const door of ["to-sure", "to-otherwise", "to-mixing"]) {
      await page.push(`#profile-panel .found-panel [data-part="${door}"]`);
      await page.until(() => document.querySelector("#profile-panel .door-panel")?.checkVisibility());
      await page.push('#profile-panel .door-panel [data-part="to-found"]');
      await page.until(() => document.querySelector("#profile-panel .found-panel")?.checkVisibility());
    }
  }
  await page.close();
});

test("the code begins with the letter of the group", async () => {
  const page = await opened();
  await page.tab_to("#log-group-first");
  await page.type("c");
  await page.sees("#log-group-about", "C-");
  const code = (await page.text("#log-group-about")).match(/C-[0-9A-Z]{4}/)[0];
  await page.sees("#bar-who", "group c");
  await steps.paste(page, steps.WITH_SLIPS);
  await page.until(() => document.getElementById("log-main").checkVisibility());
  await page.push("#bar-water");
  await page.sees("#notebooks-list", code);
  await page.press("Escape");
  // Another letter later on: the signs stay.
  await page.tab_to("#log-group");
  await page.press("Control+a");
  await page.type("F");
  await page.push("#bar-water");
  await page.sees("#notebooks-list", code.replace("C-", "F-"));
  await page.close();
});
