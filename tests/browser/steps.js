// What a group does on the page, by keyboard alone, in words of the lesson.

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The example's name on its button. */
export const EXAMPLES = ["layered-summer", "mixed-autumn", "under-ice"];

/** Opens an example from the first screen. */
export async function open_example(page, name) {
  await page.push(`#log-empty .link[data-example="${name}"]`);
  await page.until(() => document.getElementById("log-main")?.checkVisibility());
}

/** Pastes a table on Log. */
export async function paste(page, table) {
  await page.run(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
  await page.hand(table);
}

/** Goes from Log to Profile by its button. */
export async function to_profile(page) {
  await page.push("#log-profile");
  await page.until(() => document.getElementById("screen-profile")?.checkVisibility());
}

/** Goes to a screen by its mark in the bar. */
export async function go(page, screen) {
  await page.push(`[data-go="${screen}"]`);
  await page.until((s) => document.getElementById(`screen-${s}`)?.checkVisibility(), screen);
}

const FOLDER = fileURLToPath(new URL("hand_ins/", import.meta.url));

/** Goes to Class and drops everything of `hand_ins/` at once; by its name the older copy of A comes first. */
export async function drop_hand_ins(page) {
  await go(page, "class");
  const names = readdirSync(FOLDER).sort();
  const files = names.map((name) => ({ name, base64: readFileSync(FOLDER + name).toString("base64") }));
  await drop(page, files);
  await page.until(() => document.querySelector('#class-panel [data-view="add"] [data-part="counts"]')?.checkVisibility());
}

/** A hand-in with a report in it, to be dropped. */
export function hand_in_with_report(claim) {
  const hand_in = JSON.parse(readFileSync(`${FOLDER}e renamed.json`, "utf8"));
  hand_in.sheet.report = { claim, evidence: "18.1 at 3 m and 9.0 at 6 m.", reasoning: "Nowhere else it falls so fast." };
  return { name: "report.json", base64: Buffer.from(JSON.stringify(hand_in)).toString("base64") };
}

/** Drops files on the page: name and bytes. */
export function drop(page, files) {
  return page.run((files) => {
    const all = new DataTransfer();
    for (const { name, base64 } of files) {
      all.items.add(new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], name));
    }
    dispatchEvent(new DragEvent("drop", { dataTransfer: all, bubbles: true, cancelable: true }));
  }, files);
}

/** Types the three depths, top to bottom; `null` is "not in my water". */
export async function place_marks(page, depths_m) {
  for (const [row, depth_m] of depths_m.entries()) {
    const at = `#profile-panel [data-part="marks"] tr:nth-child(${row + 1})`;
    if (depth_m === null) {
      await page.tab_to(`${at} [data-part="refused"]`);
      await page.press("Space");
    } else {
      await page.tab_to(`${at} [data-part="depth"]`);
      await page.press("Control+a");
      await page.type(depth_m);
    }
  }
}

/** Presses the main button of Profile's marks; goes on where the page warns of an early check. */
export async function check_marks(page) {
  await page.push('#profile-panel .marking [data-part="acts"] .go');
  const answered = await page.until(() =>
    ['[data-part="early"]', "#profile-panel .found-panel"].find((at) => document.querySelector(at)?.checkVisibility()),
  );
  if (answered.includes("early")) {
    await page.press("Tab");
    await page.press("Enter");
  }
  await page.until(() => document.querySelector("#profile-panel .found-panel")?.checkVisibility());
}

/** The words of the question in hand. */
export function asked(page) {
  return page.text("#question-ask");
}

/** Fills the fields of the question in hand by their names: a text, a choice's value, or true for a box. */
export async function answer(page, fields) {
  for (const [name, value] of Object.entries(fields)) {
    const at = `#questions-panel [data-field="${name}"]`;
    await page.tab_to(at);
    if (value === true) await page.press("Space");
    else if (await page.run((s) => document.querySelector(s) instanceof HTMLSelectElement, at)) {
      await choose(page, at, value);
    } else {
      await page.press("Control+a");
      await page.type(value);
    }
  }
}

/** Brings the focus to a list and moves it to a value. */
export async function choose_in_list(page, at, value) {
  await page.tab_to(at);
  await choose(page, at, value);
}

/** Moves a list to a value with the arrow keys. */
async function choose(page, at, value) {
  const steps = await page.run(
    (s, v) => [...document.querySelector(s).options].findIndex((one) => one.value === v) - document.querySelector(s).selectedIndex,
    at,
    value,
  );
  for (let i = 0; i < Math.abs(steps); i += 1) await page.press(steps > 0 ? "ArrowDown" : "ArrowUp");
}

/** Writes a short report, with a number put in by its button. */
export async function write_report(page) {
  await page.tab_to("#report-title");
  await page.type("Warm water on cold");
  await page.tab_to("#report-claim");
  await page.type("The steepest part lies at");
  await page.push('#report-panel [data-part="put"] button');
  await page.tab_to("#report-evidence");
  await page.type("Between 3.5 and 4.0 m it loses 2.5 °C.");
  await page.tab_to("#report-reasoning");
  await page.type("No other half metre loses as much.");
  await page.tab_to("#report-change");
  await page.type("A second cast that is steepest elsewhere.");
}

/** Presses a button of the question by its place: 0 is the main one. */
export async function press_button(page, index = 0) {
  await page.push(`#questions-panel .question > [data-part="acts"] button:nth-of-type(${index + 1})`);
}

/** What the page offers in the question in hand: fields with their kinds and values, and buttons. */
export function offered(page) {
  return page.run(() => {
    const panel = document.querySelector("#questions-panel .question");
    const fields = [...panel.querySelectorAll("[data-field]")].filter((el) => el.checkVisibility());
    return {
      fields: fields.map((el) => ({
        name: el.dataset.field,
        kind: el instanceof HTMLSelectElement ? "list" : el.type,
        values: el instanceof HTMLSelectElement ? [...el.options].map((one) => one.value) : [el.value],
      })),
      buttons: [...panel.querySelectorAll(":scope > [data-part=acts] button")].map((el) => el.textContent.trim()),
    };
  });
}

/** Chooses a theme (or a language) in View. */
export async function choose_in_view(page, name, value) {
  await page.push("#bar-view");
  await page.tab_to(`#menu-view [name="${name}"]:checked`);
  for (let i = 0; i < 4; i += 1) {
    if (await page.run((n, v) => document.activeElement?.matches(`[name="${n}"][value="${v}"]`), name, value)) break;
    await page.press("ArrowRight");
  }
  await page.press("Escape");
}

/** Goes to a question by its mark on the rail, counted from 1. */
export async function go_to_question(page, number) {
  await page.push(`#questions-panel [data-part="rail"] li:nth-of-type(${number}) a`);
}

/** A table of our own with two slips: a lost point and two digits swapped. */
export const WITH_SLIPS = `Quillet Pond, group C
Depth (m)\tGoing down\tComing up
0.0\t23.4\t23.5
0.5\t23.4\t23.4
1.0\t23.4\t23.3
1.5\t23.3\t23.3
2.0\t23.1\t23.1
2.5\t22.8\t22.7
3.0\t21.9\t21.7
3.5\t20.2\t19.9
4.0\t177\t17.4
4.5\t15.4\t15.2
5.0\t13.6\t13.4
5.5\t12.3\t12.1
6.0\t11.3\t11.2
6.5\t10.6\t15.0
7.0\t10.1\t10.1
7.5\t9.7\t9.7
8.0\t9.4\t9.4
8.5\t9.2\t9.1
9.0\t9.0\t9.0
9.5\t8.9\t8.9
`;

/** A table with oxygen and a line about the Secchi disk; the last cell of oxygen is none. */
export const WITH_OXYGEN = `Quillet Pond, group C
Secchi: gone at 3.4 m, back at 3.0 m
Depth (m)\tGoing down\tComing up\tOxygen (mg/L)
0.0\t23.4\t23.5\t8.6
1.0\t23.4\t23.3\t8.5
2.0\t23.1\t23.1\t8.4
3.0\t21.9\t21.7\t9.1
4.0\t17.7\t17.4\t7.2
5.0\t13.6\t13.4\t4.0
6.0\t11.3\t11.2\t1.3
7.0\t10.1\t10.1\t84
`;

/** Guesses five points: two typed, three by touching the picture from its top left to its bottom right and back. */
export async function guess(page) {
  await page.push("#log-to-guess");
  await page.until(() => document.activeElement?.id === "guess-title");
  await page.press("Tab");
  for (const text of ["0", "22", "3", "20"]) {
    await page.type(text);
    await page.press("Tab");
  }
  for (const share of [0.4, 0.6, 0.8]) {
    await page.run((at) => {
      const picture = document.getElementById("log-picture");
      const { left, top, width, height } = picture.getBoundingClientRect();
      const where = { clientX: left + width * (1.1 - at), clientY: top + height * at, bubbles: true };
      picture.querySelector("canvas").dispatchEvent(new MouseEvent("click", where));
    }, share);
  }
  await page.until(() => [...document.querySelectorAll("#guess-rows input")].every((field) => field.value !== ""));
}

/** A lesson with a question in words and the two that need another group's cast. */
export const LESSON_OF_GROUPS = JSON.stringify({
  schema: "layercast-lesson",
  version: 1,
  id: "groups",
  kinds: [200, 23, 24],
  own: [{ ask: "What did you expect of the water?", by: { rubric: ["two reasons", "one reason"] } }],
  method: { reference_m: 0.5, mixed_drop_c: 1, steep_c_per_m: 1 },
});
