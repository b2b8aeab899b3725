// Class, the years: casts of one place over days and years, and what two of them can show.

import type { YearRow, YearsView } from "../../generated/core";
import { years_act, years_add, years_drawing, years_look } from "../core";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { save_file } from "../files";
import { num, say, say_into, speak, t } from "../say";
import { show } from "../state";
import { read_years, write_years } from "../storage";

/** The book, as its text and as it looks. */
interface Book {
  text: string;
  chosen: string;
  view: YearsView;
  drawing: string;
}

let book: Book | null = null;
/** What was added last, in words. */
let added = "";

function now(): Book {
  book ??= seen("", "");
  return book;
}

function seen(text: string, chosen: string): Book {
  return { text, chosen, view: years_look(text, chosen), drawing: years_drawing(text) };
}

function put(text: string, chosen = now().chosen): void {
  book = seen(text, chosen);
  void write_years(text);
  show();
}

/** What its picture is drawn from, and whether there is anything to draw. */
export function years_picture(): { drawing: string; empty: boolean } {
  const { drawing, view } = now();
  return { drawing, empty: view.rows.length === 0 };
}

/** Takes the casts of files in. */
export function take_years(bytes: readonly Uint8Array[]): void {
  const { book: text, added: what } = years_add(now().text, bytes);
  added = t("years-added", { ...what });
  speak(added);
  put(text);
}

/** Wires the panel. */
export function mount_years(el: HTMLElement): void {
  void read_years().then((text) => {
    if (text !== null && book === null) {
      book = seen(text, "");
      show();
    }
  });
  const files = by_id<HTMLInputElement>("years-files");
  part(el, "add").addEventListener("click", () => files.click());
  files.addEventListener("change", () => {
    const chosen = [...(files.files ?? [])];
    void Promise.all(chosen.map(async (file) => new Uint8Array(await file.arrayBuffer()))).then((bytes) => {
      take_years(bytes);
      files.value = "";
    });
  });
  part(el, "save").addEventListener("click", () => save_file("years.json", now().text));
  part(el, "rows").addEventListener("click", ({ target }) => {
    const row = target instanceof Element && target.closest("button") !== null ? target.closest("tr") : null;
    const one = row === null ? undefined : now().view.rows[[...part(el, "rows").children].indexOf(row)];
    if (one === undefined) return;
    book = seen(now().text, now().chosen === one.cast ? "" : one.cast);
    show();
    if (now().chosen !== "" && !one.is_day) by_id("years-day").focus();
  });
  for (const [id, action] of [
    ["years-day", "set_day"],
    ["years-place", "set_place"],
  ] as const) {
    const field = by_id<HTMLInputElement>(id);
    field.addEventListener("change", () =>
      put(years_act(now().text, { do: action, cast: now().chosen, text: field.value })),
    );
  }
  part(el, "out").addEventListener("click", () => {
    put(years_act(now().text, { do: "take_out", cast: now().chosen }), "");
    part(el, "title").focus();
  });
}

/** The book as it stands. */
export function show_years(el: HTMLElement): void {
  const { view, chosen } = now();
  const empty = view.rows.length === 0;
  toggle(part(el, "about"), empty);
  toggle(part(el, "table"), !empty);
  toggle(part(el, "save"), !empty);
  toggle(part(el, "trend"), !empty);
  say_into(part(el, "sum"), view.sum);
  toggle(part(el, "sum"), !empty);
  set_text(part(el, "added"), added);
  list(part(el, "rows"), template("template-years-row"), view.rows, (row, one) => fill_row(row, one, chosen));
  say_into(part(el, "trend"), view.trend);
  const in_hand = view.rows.find((one) => one.cast === chosen);
  toggle(part(el, "chosen"), in_hand !== undefined);
  if (in_hand !== undefined) {
    const day = by_id<HTMLInputElement>("years-day");
    // A date field that is being typed in holds nothing until it is whole.
    if (document.activeElement !== day) set_value(day, in_hand.is_day ? in_hand.day : "");
    set_value(by_id<HTMLInputElement>("years-place"), in_hand.place);
  }
  const hint = part(el, "hint");
  set_text(hint, t(in_hand === undefined ? "years-choose" : "years-day-first"));
  toggle(hint, !empty && (in_hand === undefined || !in_hand.is_day));
  list(part(el, "pairs"), template("template-years-pair"), view.pairs, (item, pair) => {
    const [earlier, later] = pair.days;
    set_text(part(item, "days"), t("years-beside", { earlier, later }));
    list(part(item, "said"), template("template-lesson-said"), pair.said, (line, said) => say_into(line, said));
  });
}

function fill_row(row: HTMLElement, one: YearRow, chosen: string): void {
  row.classList.toggle("on", one.cast === chosen);
  const name = part(row, "name");
  set_text(name, [one.is_day ? one.day : "", one.group, one.place].filter(Boolean).join(" · ") || "?");
  set_attr(name, "aria-pressed", String(one.cast === chosen));
  set_text(part(row, "value"), one.value === null ? "" : num(one.value));
  say_into(part(row, "said"), one.said);
  set_text(part(row, "mixed"), one.mixed === null ? "" : num(one.mixed));
  set_text(part(row, "heat"), one.heat === null ? "" : say(one.heat));
}
