// Questions: one question at a time, its parts with their verdicts, hints and fields, the picture always in sight.

import type { Action, FieldView, PartView, QuestionView, Said, SumLine, Way } from "../../generated/core";
import { reading_in_hand } from "../cursor";
import { by_id, clone, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { focus_is_lost } from "../focus";
import { mount_picture } from "../picture";
import { mount_read_aloud, show_read_aloud } from "../read_aloud";
import { mount_readings } from "../readings";
import { save_picture } from "../save_picture";
import { say, say_into, speak, t } from "../say";
import { show_one, show_small } from "../small_pictures";
import { dispatch, on_show, type State, set_ui, state } from "../state";
import { show_verdict } from "../verdict";
import { show_ways } from "../ways";
import { last_hint, read_out, verdicts } from "./question_said";

type Panel = "waiting" | "question" | "table";

/** What was pressed, so that the next show knows what to say and where to put the focus. */
type Pressed = "checked" | "hinted" | "again" | "moved" | null;

/** Makes the screen work. */
export function mount_questions(): void {
  const screen = by_id("screen-questions");
  const figure = by_id("questions-picture");
  const picture = mount_picture(figure, "questions");
  const panels = new Map<string, HTMLElement>();
  for (const el of screen.querySelectorAll<HTMLElement>("[data-view]")) panels.set(el.dataset.view ?? "", el);
  const panel = (name: Panel): HTMLElement => panels.get(name) ?? screen;
  const readings = mount_readings(panel("table"), figure, picture, () => save_picture(picture));
  const main = panel("question");
  const answer = part(main, "answer");
  const reason = by_id<HTMLTextAreaElement>("question-reason");
  const own_words = by_id<HTMLTextAreaElement>("question-own-words");
  const acts = part(main, "acts");

  let pressed: Pressed = null;
  let here = false;
  /** Parts that were open when Check was pressed: their verdicts are spoken. */
  let open_before: number[] = [];

  part(panel("waiting"), "to-log").addEventListener("click", () =>
    dispatch({ do: "go", screen: "log", question: null }),
  );
  part(main, "to-table").addEventListener("click", () => {
    set_ui({ panel: "table" });
    part(panel("table"), "title").focus();
  });
  part(main, "rail").addEventListener("click", (event) => {
    const mark = event.target instanceof Element ? event.target.closest("a") : null;
    if (mark === null) return;
    event.preventDefault();
    const index = [...part(main, "rail").querySelectorAll("a")].indexOf(mark);
    if (index >= 0) dispatch({ do: "go", screen: "questions", question: index });
  });

  const question = (): number => state().look.place.question;
  answer.addEventListener("input", (event) => {
    const el = event.target;
    if (el === reason) return dispatch({ do: "set_reason", question: question(), text: reason.value });
    if (el === own_words) return dispatch({ do: "set_own_words", question: question(), text: own_words.value });
    const typed =
      el instanceof HTMLInputElement || el instanceof HTMLSelectElement || el instanceof HTMLTextAreaElement;
    if (!typed) return;
    const field = el.dataset.field;
    if (field === undefined) return;
    const ticked = el instanceof HTMLInputElement && el.type === "checkbox" ? (el.checked ? "1" : "") : el.value;
    dispatch({ do: "set_field", question: question(), field, text: ticked });
  });
  mount_read_aloud(by_id("question-read"), () => {
    const { current } = state().look.questions;
    return current === null ? [] : read_out(current);
  });
  answer.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    acts.querySelector<HTMLElement>(".go")?.click();
  });

  function press(action: Action): boolean {
    open_before = [];
    switch (action.do) {
      case "check":
      case "cannot_tell":
      case "show_me":
        pressed = "checked";
        open_before = open_parts(state().look.questions.current);
        break;
      case "hint":
        pressed = "hinted";
        break;
      case "answer_again":
        pressed = "again";
        break;
      case "go":
        pressed = "moved";
        break;
      default:
        pressed = null;
    }
    return false;
  }

  function show(s: Readonly<State>): void {
    const arrived = s.look.place.screen === "questions" && !here;
    here = s.look.place.screen === "questions";
    if (!here) return;
    if (arrived && focus_is_lost(by_id("questions-panel"))) pressed = "moved";
    const view = s.look.questions;
    const now: Panel =
      view.not_yet !== null || view.current === null ? "waiting" : s.ui.panel === "table" ? "table" : "question";
    for (const [name, el] of panels) toggle(el, name === now);
    if (now === "waiting" && view.not_yet !== null) say_into(part(panel("waiting"), "not-yet"), view.not_yet);
    if (now === "table") readings.show(s, t("page-questions-to-question"));
    if (now === "question" && view.current !== null) {
      show_question(main, s, view.current, press);
      after_press(view.current);
    }
    picture.show(s);
  }

  /** Says a verdict or hint once, and puts the focus where the work goes on. */
  function after_press(current: QuestionView): void {
    const what = pressed;
    pressed = null;
    if (what === null) return;
    const all_done = state().look.questions.all_done;
    if (what === "checked")
      speak([verdicts(current, open_before), all_done && say(all_done)].filter(Boolean).join(" "));
    if (what === "hinted") speak(last_hint(current));
    if (what === "hinted") return;
    const field = open_field(main, current);
    if (what === "moved") {
      const touch = matchMedia("(pointer: coarse)").matches;
      (touch || field === null ? by_id("question-ask") : field).focus();
      part(main, "rail").closest(".work")?.scrollTo({ top: 0 });
      return;
    }
    const next = field ?? (part(main, "own-words-part").hidden ? null : own_words);
    (next ?? acts.querySelector<HTMLElement>(".go, .do") ?? by_id("question-ask")).focus();
    // The verdict is what was asked for: it stands in sight, above what goes on.
    missed_part(main, current)?.querySelector("[data-part=verdict]")?.scrollIntoView({ block: "nearest" });
  }

  on_show(show);
}

function open_parts(current: QuestionView | null): number[] {
  return (current?.parts ?? []).flatMap((one, index) => (one.settled ? [] : [index]));
}

/** The field a verdict is about, else the first empty field that waits, else the first open one. */
function open_field(main: HTMLElement, current: QuestionView): HTMLElement | null {
  const fields = [
    ...part(main, "parts").querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(
      "input, select, textarea",
    ),
  ];
  const about = current.parts.find((one) => one.look_at !== null)?.look_at;
  // Of several parts the one that was not right comes first; a choice is gone on with where it stands.
  const missed = missed_part(main, current);
  const first = (of: readonly (typeof fields)[number][]) =>
    of.find((field) => field.value === "") ??
    of.find((field) => field instanceof HTMLInputElement && field.type === "radio" && field.checked) ??
    of[0];
  return (
    fields.find((field) => field.dataset.field === about) ??
    first(fields.filter((field) => missed?.contains(field))) ??
    first(fields) ??
    null
  );
}

/** The part whose last answer was not right, and is open. */
function missed_part(main: HTMLElement, current: QuestionView): Element | null {
  const at = current.parts.findIndex((one) => one.verdict !== null && !one.settled && one.lines.length > 0);
  return at < 0 ? null : (part(main, "parts").children[at] ?? null);
}

function show_question(
  main: HTMLElement,
  s: Readonly<State>,
  current: QuestionView,
  press: (action: Action) => boolean,
): void {
  const view = s.look.questions;
  set_text(part(main, "count"), t("page-questions-count", { number: current.number, of: current.of }));
  list(part(main, "rail"), template("template-question-mark"), view.rail, (el, item) => {
    const link = el.firstElementChild;
    if (link === null) return;
    link.className = item.done ? "done" : "";
    set_attr(link, "aria-current", item.current ? "step" : null);
    const id = item.done ? "page-questions-mark-done" : "page-questions-mark";
    set_text(link.firstElementChild ?? link, t(id, { number: item.number }));
  });
  say_into(by_id("question-ask"), current.ask);
  show_read_aloud(by_id("question-read"));
  const leads = part(main, "leads");
  toggle(leads, current.lead.length > 0);
  list(leads, template("template-question-note"), current.lead, (el, lead) => say_into(el, lead));
  show_locked(main, current.locked, press);

  const tried = current.parts.some((one) => one.verdict !== null);
  const closed = current.parts.every((one) => one.lines.length === 0);
  const facts = current.parts.some((one) => one.lines.some(is_fact_line));
  main.classList.toggle("tried", tried && !closed);
  main.classList.toggle("closed", closed && current.locked === null);
  main.classList.toggle("facts", facts);
  list(part(main, "parts"), template("template-question-part"), current.parts, (el, one) => show_part(el, one));

  toggle(part(main, "reason-line"), current.reason !== null);
  if (current.reason !== null) set_value(by_id<HTMLTextAreaElement>("question-reason"), current.reason);
  toggle(part(main, "own-words-part"), current.own_words !== null);
  if (current.own_words !== null) {
    say_into(part(main, "own-words-ask"), current.own_words[0]);
    set_value(by_id<HTMLTextAreaElement>("question-own-words"), current.own_words[1]);
  }
  const all_done = part(main, "all-done");
  toggle(all_done, view.all_done !== null);
  if (view.all_done !== null) say_into(all_done, view.all_done);
  const waits = part(main, "waits");
  toggle(part(main, "acts"), current.buttons.length > 0);
  show_ways(part(main, "acts"), current.buttons, { waits, press });
  toggle(
    waits,
    current.buttons.some((way) => way.waits !== null),
  );
  show_foot(main, s, [...current.notes, ...view.about]);
}

function show_locked(main: HTMLElement, locked: Way | null, press: (action: Action) => boolean): void {
  toggle(part(main, "locked"), locked !== null);
  if (locked === null) return;
  const why = part(main, "locked-why");
  toggle(why, locked.waits !== null);
  if (locked.waits !== null) say_into(why, locked.waits);
  show_ways(part(main, "locked-ways"), [{ ...locked, waits: null }], { press });
}

function show_foot(main: HTMLElement, s: Readonly<State>, notes: readonly Said[]): void {
  const reading = reading_in_hand(s);
  const line = part(main, "reading");
  toggle(line, reading !== null);
  if (reading !== null) say_into(line, reading.said);
  list(part(main, "foot-notes"), template("template-profile-fact"), notes, (el, note) => say_into(el, note));
}

// Parts.

function is_fact_line(line: PartView["lines"][number]): boolean {
  return line.fields.some((field) => field.kind.kind === "fact");
}

function show_part(el: HTMLElement, one: PartView): void {
  el.classList.toggle("tried", one.verdict !== null);
  show_verdict(part(el, "verdict"), one.verdict);
  list(part(el, "notes"), template("template-profile-note"), one.notes, (note, said) => say_into(note, said));
  show_sum(el.querySelector<HTMLElement>(":scope > .sum"), one.sum);
  const fits = part(el, "fits");
  toggle(fits, one.fits !== null);
  if (one.fits !== null) say_into(fits, one.fits);
  show_one(part(el, "picture"), one.picture);
  const hints = part(el, "hints");
  toggle(hints, one.hints.length > 0);
  list(hints, template("template-question-hint"), one.hints, (hint_el, hint) => {
    say_into(part(hint_el, "head"), hint.head);
    const said = part(hint_el, "said");
    toggle(said, hint.said !== null);
    if (hint.said !== null) say_into(said, hint.said);
    show_sum(hint_el.querySelector<HTMLElement>(".sum"), hint.sum);
  });
  const lines = part(el, "lines");
  toggle(lines, one.lines.length > 0);
  list(lines, template("template-question-line"), one.lines, (line_el, line) => {
    line_el.classList.toggle("fact", is_fact_line(line));
    const label = line_el.firstElementChild as HTMLElement;
    say_into(label, line.label);
    toggle(label, !is_fact_line(line));
    show_fields(part(line_el, "fields"), line.fields);
    const before = part(line_el, "before");
    toggle(before, line.before !== null);
    if (line.before !== null) say_into(before, line.before);
  });
}

function show_sum(table: HTMLElement | null, sum: readonly SumLine[]): void {
  if (table === null) return;
  toggle(table, sum.length > 0);
  list(part(table, "sum"), template("template-question-sum"), sum, (row, line) => {
    row.className = line.result ? "res" : "";
    say_into(part(row, "left"), line.left);
    say_into(part(row, "right"), line.right);
    say_into(part(row, "gloss"), line.gloss);
  });
}

// Fields: reused while id and kind stay the same, so that the focus and a text being typed survive.

const TEMPLATES = {
  number: "template-question-number",
  list: "template-question-list",
  choice: "template-question-choice",
  fact: "template-question-fact",
  pictures: "template-question-pictures",
  prose: "template-question-prose",
} as const;

function show_fields(parent: HTMLElement, fields: readonly FieldView[]): void {
  for (const [index, field] of fields.entries()) {
    const key = `${field.kind.kind} ${field.id}`;
    let el = parent.children[index] as HTMLElement | undefined;
    if (el?.dataset.key !== key) {
      const made = clone(template(TEMPLATES[field.kind.kind]));
      made.dataset.key = key;
      if (el === undefined) parent.append(made);
      else el.replaceWith(made);
      el = made;
    }
    fill_field(el, field);
  }
  while (parent.children.length > fields.length) parent.lastElementChild?.remove();
}

/** Puts the beginning of a sentence at the end of what is written, and the caret behind it. */
function begin_with(area: HTMLTextAreaElement, starter: string): void {
  const begun = starter.replace(/\s*…[^…]*$/u, " ");
  const before = area.value.trimEnd();
  area.value = before === "" ? begun : `${before} ${begun}`;
  area.focus();
  area.setSelectionRange(area.value.length, area.value.length);
  area.dispatchEvent(new Event("input", { bubbles: true }));
}

function fill_field(el: HTMLElement, field: FieldView): void {
  const { kind } = field;
  if (kind.kind === "choice") {
    set_attr(el, "aria-label", say(field.name));
    list(el, template("template-question-choice-option"), kind.options, (option_el, option) => {
      const radio = option_el.firstElementChild as HTMLInputElement;
      radio.name = field.id;
      radio.dataset.field = field.id;
      radio.value = option.value;
      radio.checked = option.value === field.text;
      say_into(part(option_el, "label"), option.label);
    });
    return;
  }
  if (kind.kind === "pictures") {
    set_attr(el, "aria-label", say(field.name));
    list(el, template("template-question-picture"), kind.pictures.options, (option_el, option, index) => {
      const radio = option_el.querySelector("input") as HTMLInputElement;
      radio.name = field.id;
      radio.dataset.field = field.id;
      radio.value = option.value;
      radio.checked = option.value === field.text;
      set_attr(radio, "aria-label", `${say(option.label)}: ${say(option.alt)}`);
      say_into(part(option_el, "label"), option.label);
      show_small(part(option_el, "canvas") as HTMLCanvasElement, kind.pictures, index);
    });
    return;
  }
  if (kind.kind === "prose") {
    const area = el.querySelector("textarea") as HTMLTextAreaElement;
    area.dataset.field = field.id;
    set_attr(area, "aria-label", say(field.name));
    set_value(area, field.text);
    list(part(el, "starters"), template("template-question-starter"), kind.starters, (start_el, starter) => {
      const button = start_el as HTMLButtonElement;
      say_into(button, starter);
      button.onclick = () => begin_with(area, say(starter));
    });
    return;
  }
  const control = el.querySelector<HTMLInputElement | HTMLSelectElement>("input, select");
  if (control === null) return;
  control.dataset.field = field.id;
  if (kind.kind === "fact") {
    (control as HTMLInputElement).checked = field.text !== "";
    say_into(part(el, "fact"), kind.fact);
    return;
  }
  set_attr(control, "aria-label", say(field.name));
  if (kind.kind === "list") {
    list(control, template("template-question-option"), kind.options, (option_el, option) => {
      (option_el as HTMLOptionElement).value = option.value;
      set_text(option_el, say(option.label));
    });
  }
  set_value(control, field.text);
  const after = part(el, "after");
  toggle(after, field.after !== null);
  if (field.after !== null) say_into(after, field.after);
}
