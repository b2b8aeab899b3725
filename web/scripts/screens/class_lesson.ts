// Class, the lesson: which questions, in which order, for how many points; questions of one's own; what is open; one file for the
// class and one sheet for whoever runs it.

import type {
  LessonAction,
  LessonText,
  LessonView,
  OwnNumber,
  OwnView,
  Quantity,
  TakenView,
} from "../../generated/core";
import { class_book, class_take_lesson } from "../class_state";
import { lesson_act, lesson_look, lesson_of_ours, open_bytes } from "../core";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { save_file } from "../files";
import { num, say, say_into, t, t_lines } from "../say";
import { show } from "../state";
import { read_lesson, write_lesson } from "../storage";

/** What a question of one's own can ask; the first is words. */
const BY: readonly (Quantity | "")[] = [
  "",
  "temp_at",
  "apart",
  "per_metre",
  "depth_of",
  "warmest",
  "coldest",
  "warmest_coldest",
];
const BY_WORDS: Record<Quantity | "", string> = {
  "": "class-lesson-by-words",
  temp_at: "class-lesson-by-temp-at",
  apart: "class-lesson-by-apart",
  per_metre: "class-lesson-by-per-metre",
  depth_of: "class-lesson-by-depth-of",
  warmest: "class-lesson-by-warmest",
  coldest: "class-lesson-by-coldest",
  warmest_coldest: "class-lesson-by-warmest-coldest",
};
const LEVELS = [
  "class-lesson-level-1",
  "class-lesson-level-2",
  "class-lesson-level-3",
  "class-lesson-level-4",
] as const;

/** Steps that can be taken back. */
const MOST_UNDO = 50;

/** The lesson in the making, as its text; made when it is first looked at. */
let lesson: { text: string; view: LessonView } | null = null;
/** What it was before, the newest last. */
const before: string[] = [];
/** The field that the last step typed in, or nothing. */
let last_field = "";
/** What is to be said of the file that was opened. */
let said: readonly string[] = [];

function now(): { text: string; view: LessonView } {
  lesson ??= seen(lesson_of_ours(false));
  return lesson;
}

function seen(text: string): { text: string; view: LessonView } {
  return { text, view: lesson_look(text) };
}

function does(action: LessonAction): void {
  // One field that is typed in is one step.
  const field = "text" in action ? JSON.stringify({ ...action, text: "" }) : "";
  put(lesson_act(now().text, action), field !== "" && field === last_field);
  last_field = field;
}

function put(text: string, goes_on = false): void {
  const { text: old } = now();
  if (old === text) return;
  if (!goes_on) before.push(old);
  if (before.length > MOST_UNDO) before.shift();
  write(text);
}

function write(text: string): void {
  lesson = seen(text);
  void write_lesson(text);
  show();
}

/** Opens a lesson's file to go on with it; false: the bytes are none. */
export function open_lesson(bytes: Uint8Array): boolean {
  const opened = open_bytes(bytes);
  if (opened.kind !== "lesson") return false;
  said = opened.said.map(say);
  put(opened.lesson);
  show();
  return true;
}

/** Puts the focus where something is missing. */
function focus_lack(row: Element | undefined, { own }: TakenView): void {
  const fields = [...(row?.querySelectorAll<HTMLInputElement>("[data-part=own] :is(textarea, input)") ?? [])];
  const needed = fields.filter(
    (field) => ["ask", "at", "to", "temp"].includes(field.dataset.part ?? "") && !field.hidden,
  );
  const empty = needed.find((field) => field.value.trim() === "");
  (own === null ? undefined : (empty ?? needed[0]))?.focus();
}

function say_that(words: readonly string[]): void {
  said = words;
  show();
}

/** A button that asks for a file, and what is done with the one that is chosen. */
function on_file(press: HTMLElement, id: string, take: (file: File) => Promise<void>): void {
  const field = by_id<HTMLInputElement>(id);
  press.addEventListener("click", () => field.click());
  field.addEventListener("change", () => {
    const [chosen] = field.files ?? [];
    if (chosen === undefined) return;
    void take(chosen).then(() => {
      field.value = "";
    });
  });
}

/** Wires the panel. */
export function mount_lesson(el: HTMLElement): void {
  void read_lesson().then((text) => {
    if (text !== null && lesson === null) {
      try {
        lesson = seen(text);
      } catch {
        lesson = null; // what was kept is no lesson any more: the first one is begun with
      }
    }
  });
  for (const [id, what] of [
    ["lesson-title", "title"],
    ["lesson-note", "note"],
    ["lesson-run", "run_note"],
  ] as const satisfies readonly (readonly [string, LessonText])[]) {
    const field = by_id<HTMLInputElement | HTMLTextAreaElement>(id);
    field.addEventListener("input", () => does({ do: "write", what, text: field.value }));
  }
  const more = by_id<HTMLSelectElement>("lesson-more");
  more.addEventListener("change", () => {
    const other = now().view.others[more.selectedIndex - 1];
    more.selectedIndex = 0;
    if (other !== undefined) does(other.take);
  });
  const help = by_id<HTMLSelectElement>("lesson-help");
  help.addEventListener("change", () => {
    if (help.value === "more" || help.value === "usual" || help.value === "less") {
      does({ do: "set_help", help: help.value });
    }
  });
  const speech = by_id<HTMLSelectElement>("lesson-language");
  speech.addEventListener("change", () => does({ do: "set_language", text: speech.value }));
  part(el, "add-own").addEventListener("click", () => {
    does({ do: "add_own" });
    part(el, "taken").lastElementChild?.querySelector("textarea")?.focus();
  });
  part(el, "whole").addEventListener("click", () => put(lesson_of_ours(true)));
  part(el, "undo-lesson").addEventListener("click", () => {
    const old = before.pop();
    if (old !== undefined) write(old);
  });
  on_file(part(el, "choose-lesson"), "lesson-file", async (file) => {
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (!open_lesson(bytes)) say_that([t("class-lesson-not-one")]);
  });
  // Two questions compare the group's cast with one that the lesson brings along.
  on_file(part(el, "choose-other"), "lesson-other-file", async (file) => {
    const text = await file.text();
    const held = now().text;
    does({ do: "take_other", text });
    say_that(now().text === held ? [t("page-log-other-no")] : []);
  });
  part(el, "drop-other").addEventListener("click", () => {
    does({ do: "remove_other" });
    part(el, "choose-other").focus();
  });
  part(el, "taken").addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>("button") : null;
    const one = taken_of(el, button);
    const name = button?.dataset.part;
    const action = one === undefined ? null : press_of(one, name);
    if (one === undefined || action === null) return;
    does(action);
    // The focus goes with the question that moves.
    const row = part(el, "taken").children[now().view.taken.findIndex(({ kind }) => kind === one.kind)];
    const [same, other] = [name, name === "up" ? "down" : "up"].map((which) =>
      row?.querySelector<HTMLButtonElement>(`[data-part=${which}]`),
    );
    if (name !== "leave") (same?.disabled ? other : same)?.focus();
  });
  // Each key, as it is typed: a step elsewhere draws the fields anew.
  part(el, "taken").addEventListener("input", ({ target }) => {
    if (!(target instanceof HTMLElement)) return;
    const one = taken_of(el, target);
    const action = one === undefined ? null : typed(one, target as HTMLInputElement);
    if (action !== null) does(action);
  });
  part(el, "taken").addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement) || target.dataset.part !== "points") return;
    const one = taken_of(el, target);
    if (one === undefined || target.value.trim() === one.points || target.value.trim() === "") return say_that([]);
    say_that([t("class-lesson-points-not", { text: target.value, name: say(one.name), points: one.points })]);
    target.value = one.points;
  });
  part(el, "open").addEventListener("change", ({ target }) => {
    const label = target instanceof Element ? target.closest("label") : null;
    const one = now().view.open[label === null ? -1 : [...part(el, "open").children].indexOf(label)];
    if (one !== undefined) does(one.turn);
  });
  part(el, "rules").addEventListener("input", ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const line = target.closest("p");
    const one = now().view.rules[line === null ? -1 : [...part(el, "rules").children].indexOf(line)];
    if (one !== undefined) does({ do: "set_rule", rule: one.rule, text: target.value });
  });
  part(el, "save-lesson").addEventListener("click", () => {
    // A question of one's own that lacks something would be asked of nobody: said first, with the place to mend it.
    const lacks = now().view.taken.findIndex((one) => one.own !== null && one.own.lacks !== null);
    const one = now().view.taken[lacks];
    if (one !== undefined) {
      const why = one.own?.lacks ? say(one.own.lacks) : "";
      say_that([t("class-lesson-not-whole", { number: lacks + 1, why })]);
      focus_lack(part(el, "taken").children[lacks], one);
      return;
    }
    say_that([]);
    save_file(`${now().view.file_name}.json`, now().text);
  });
  // Everything in the class is computed again by it: never by the way.
  part(el, "use-lesson").addEventListener("click", () => class_take_lesson(now().text));
  part(el, "print-lesson").addEventListener("click", () => {
    show_sheet();
    document.documentElement.dataset.prints = "lesson";
    print();
    delete document.documentElement.dataset.prints;
  });
}

function taken_of(el: HTMLElement, inside: Element | null): TakenView | undefined {
  const row = inside?.closest("li") ?? null;
  return row === null ? undefined : now().view.taken[[...part(el, "taken").children].indexOf(row)];
}

function press_of(one: TakenView, name: string | undefined): LessonAction | null {
  switch (name) {
    case "up":
      return one.up;
    case "down":
      return one.down;
    case "leave":
      return one.leave;
    default:
      return null;
  }
}

const NUMBERS: Record<string, OwnNumber> = { at: "at", to: "to", temp: "temp" };

function typed(one: TakenView, field: HTMLInputElement): LessonAction | null {
  const { value: text } = field;
  const name = field.dataset.part ?? "";
  if (name === "points") return { do: "set_points", kind: one.kind, text };
  if (one.own === null) return null;
  const { own } = one.own;
  const number = NUMBERS[name];
  if (number !== undefined) return { do: "set_own_number", own, number, text };
  if (name === "ask") return { do: "ask_own", own, text };
  if (name === "hint") return { do: "hint_own", own, text };
  if (name === "by") return { do: "set_own_by", own, quantity: (text || null) as Quantity | null };
  const line = field.closest("[data-part=levels] > label");
  const level = line === null ? -1 : [...(line.parentElement?.children ?? [])].indexOf(line);
  return level < 0 ? null : { do: "set_level", own, level, text };
}

/** The lesson as it stands. */
export function show_lesson(el: HTMLElement): void {
  const { view } = now();
  set_value(by_id<HTMLInputElement>("lesson-title"), view.title);
  set_value(by_id<HTMLTextAreaElement>("lesson-note"), view.note);
  set_value(by_id<HTMLTextAreaElement>("lesson-run"), view.run_note);
  const note = part(el, "said");
  toggle(note, said.length > 0);
  list(note, template("template-lesson-said"), said, (line, words) => set_text(line, words));
  toggle(part(el, "undo-lesson"), before.length > 0);
  toggle(part(el, "use-lesson"), class_book().view.sheets.length > 0);
  say_into(part(el, "sum"), view.sum);
  list(part(el, "taken"), template("template-lesson-taken"), view.taken, fill_taken);
  const others = ["", ...view.others.map((one) => say(one.name))];
  list(by_id("lesson-more"), template("template-class-option"), others, (option, words) => set_text(option, words));
  toggle(part(el, "add-own"), view.add_own !== null);
  list(part(el, "open"), template("template-lesson-open"), view.open, (label, one) => {
    say_into(part(label, "name"), one.name);
    const box = label.querySelector("input");
    if (box !== null) box.checked = one.open;
  });
  const [held, is_held] = view.other;
  say_into(part(el, "other"), held);
  toggle(part(el, "drop-other"), is_held);
  list(part(el, "rules"), template("template-lesson-rule"), view.rules, (line, one) => {
    say_into(part(line, "name"), one.name);
    say_into(part(line, "unit"), one.unit);
    const field = line.querySelector("input");
    if (field !== null && document.activeElement !== field) set_value(field, num(one.value));
  });
  set_value(by_id<HTMLSelectElement>("lesson-help"), view.help);
  set_value(by_id<HTMLSelectElement>("lesson-language"), view.language);
}

function fill_taken(row: HTMLElement, one: TakenView): void {
  say_into(part(row, "name"), one.name);
  const points = part<HTMLInputElement>(row, "points");
  if (document.activeElement !== points) set_value(points, one.points);
  set_attr(points, "aria-label", t("class-lesson-points-of", { name: say(one.name) }));
  for (const [name, action] of [
    ["up", one.up],
    ["down", one.down],
  ] as const) {
    part<HTMLButtonElement>(row, name).disabled = action === null;
  }
  for (const [name, words] of [
    ["up", "class-lesson-up"],
    ["down", "class-lesson-down"],
    ["leave", "class-lesson-leave"],
  ] as const) {
    set_attr(part(row, name), "aria-label", `${t(words)}: ${say(one.name)}`);
  }
  const own = part(row, "own");
  toggle(own, one.own !== null);
  if (one.own !== null) fill_own(own, one.own, say(one.name));
}

function fill_own(el: HTMLElement, own: OwnView, name: string): void {
  set_value(part<HTMLTextAreaElement>(el, "ask"), own.ask);
  set_value(part<HTMLInputElement>(el, "hint"), own.hint);
  const by = part<HTMLSelectElement>(el, "by");
  list(by, template("template-class-option"), BY, (option, quantity) => {
    set_attr(option, "value", quantity);
    set_text(option, t(BY_WORDS[quantity]));
  });
  set_value(by, own.quantity ?? "");
  set_attr(by, "aria-label", `${t("class-lesson-by")}: ${name}`);
  for (const [field_name, text, words] of [
    ["at", own.depths[0], "class-lesson-at"],
    ["to", own.depths[1], "class-lesson-to"],
    ["temp", own.temp ?? undefined, "class-lesson-temp"],
  ] as const) {
    const field = part<HTMLInputElement>(el, field_name);
    toggle(field, text !== undefined);
    if (text !== undefined && document.activeElement !== field) set_value(field, text);
    const of = part(el, `${field_name}-of`);
    toggle(of, text !== undefined);
    set_text(of, t(words));
    set_attr(field, "aria-label", `${t(words)}: ${name}`);
  }
  list(part(el, "levels"), template("template-lesson-level"), own.rubric, (line, words, index) => {
    set_text(part(line, "name"), t(LEVELS[index] ?? LEVELS[0]));
    const field = line.querySelector("input");
    if (field !== null) set_value(field, words);
  });
  toggle(part(el, "rubric"), own.quantity === null);
  toggle(part(el, "lacks"), own.lacks !== null);
  if (own.lacks !== null) say_into(part(el, "lacks"), own.lacks);
}

/** One sheet from which somebody else can run it. */
function show_sheet(): void {
  const { view } = now();
  const el = by_id("lesson-sheet");
  set_text(part(el, "title"), view.title || t("class-to-lesson"));
  say_into(part(el, "sum"), view.sum);
  set_text(part(el, "run"), view.run_note);
  const item = template("template-lesson-sheet");
  list(part(el, "plan"), item, view.plan, (line, one) => {
    set_text(line, t("class-run-plan-row", { name: say(one.name), minutes: one.minutes }));
  });
  say_into(part(el, "plan-sum"), view.plan_sum);
  const hints = view.taken.flatMap((one) =>
    one.own?.hint.trim() ? [{ name: say(one.name), hint: one.own.hint }] : [],
  );
  toggle(part(el, "hints-head"), hints.length > 0);
  list(part(el, "hints"), item, hints, (line, one) => set_text(line, t("class-run-hint", one)));
  list(part(el, "before"), item, t_lines("class-run-before-lines"), (line, words) => set_text(line, words));
  list(part(el, "questions"), item, view.taken, (line, one) => {
    set_text(line, t("class-run-question", { name: say(one.name), points: one.points }));
  });
  list(part(el, "after"), item, t_lines("class-run-after-lines"), (line, words) => set_text(line, words));
}
