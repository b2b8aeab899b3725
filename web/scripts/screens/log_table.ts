// Log's table: each row at its depth beside the picture, or scrolling when there are more rows than fit. Arrows and Enter
// go down the readings and, at the last mark, climb "coming up" as the class did.

import type { Action, LogCell, LogRow, PlacementView } from "../../generated/core";
import { by_id, focus_seen, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { PLACED } from "../picture";
import { num, t } from "../say";
import { dispatch, type State, state } from "../state";
import { is_stacked } from "../view_menu";

/** Columns of cells, left to right. */
export type Column = "depth" | "down" | "up";

/** Rows in the page at once when the table is long: those in sight and some around them. */
const WINDOW_ROWS = 80;
/** A cell being typed into is left in peace until this long after the last key, milliseconds. */
const REST_MS = 1200;

let place: () => PlacementView | null = () => null;
let typing: HTMLInputElement | null = null;
let last_key = 0;
let rest: ReturnType<typeof setTimeout> | null = null;
let typing_end: () => void = () => {};
/** The first row in the page, and how many rows there are. */
let from = 0;
let rows: readonly LogRow[] = [];
/** The first of the rows that are listed, in a very long cast. */
let listed_from = 0;
/** The row in hand: only its cells are stops of the Tab key, so that the way past the table is short. */
let in_hand = 0;

/** Whether a cell is being typed into at the moment. */
export function is_typing(): boolean {
  return typing !== null && performance.now() - last_key < REST_MS;
}

/** Says who is told when typing into a cell has come to rest. */
export function on_typing_end(listener: () => void): void {
  typing_end = listener;
}

/** Wires the table; it stands beside `figure`. */
export function mount_log_table(figure: HTMLElement, placement: () => PlacementView | null): void {
  place = placement;
  const body = by_id("log-rows");
  body.addEventListener("input", (event) => typed(event.target as HTMLInputElement));
  body.addEventListener("keydown", pressed);
  body.addEventListener("focusout", end_typing);
  body.addEventListener("focusin", (event) => {
    if (!(event.target instanceof HTMLInputElement)) return;
    in_hand = row_of(event.target);
    set_stops();
  });
  figure.addEventListener(PLACED, () => lay());
  by_id("log-cells").addEventListener("scroll", () => scrolled());
}

function typed(cell: HTMLInputElement): void {
  const action = action_of(cell);
  if (!action) return;
  typing = cell;
  last_key = performance.now();
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(typing_end, REST_MS + 20);
  const row = rows[row_of(cell)];
  dispatch(action, () => {
    if (row && action.do === "set_depth" && typing === cell) follow(cell, row);
  });
}

function action_of(cell: HTMLInputElement): Action | null {
  const row = rows[row_of(cell)];
  if (!row) return null;
  if (column_of(cell) === "depth") return { do: "set_depth", entries: row.entries, text: cell.value };
  const of = column_of(cell) === "up" ? row.up : row.down;
  if (!of) return null;
  return { do: "set_cell", entry: of.entry, depth_m: row.depth.value, leg: of.leg, text: cell.value };
}

/** A depth typed anew may move its row: the focus and the caret go with it. */
function follow(cell: HTMLInputElement, row: LogRow): void {
  const entry = row.entries[0];
  const now = rows.findIndex((one) => one.entries[0] === entry);
  if (now < 0 || now === row_of(cell)) return;
  const { value, selectionStart } = cell;
  typing = null;
  focus_cell(now, "depth");
  const there = document.activeElement;
  if (!(there instanceof HTMLInputElement)) return;
  there.value = value;
  there.setSelectionRange(selectionStart, selectionStart);
  typing = there;
}

function end_typing(): void {
  if (typing === null) return;
  typing = null;
  if (rest !== null) clearTimeout(rest);
  typing_end();
}

function pressed(event: KeyboardEvent): void {
  const cell = event.target;
  if (!(cell instanceof HTMLInputElement) || event.ctrlKey || event.metaKey || event.altKey || event.isComposing)
    return;
  const to = next_cell(cell, event);
  if (event.key === "Escape" && state().ui.menu === null && by_id("busy").hidden) leave_table();
  if (!to) return;
  event.preventDefault();
  end_typing();
  focus_cell(to.row, to.column);
}

/** Esc leads out of the table, to the first thing to press beside it. */
export function leave_table(): void {
  const next = [...by_id("log-panel").querySelectorAll<HTMLElement>("button")].find((el) => el.offsetParent !== null);
  focus_seen(next ?? by_id("log-panel"));
}

function next_cell(cell: HTMLInputElement, event: KeyboardEvent): { row: number; column: Column } | null {
  const row = row_of(cell);
  const column = column_of(cell);
  const last = rows.length - 1;
  const two = !state().look.log.one_column;
  switch (event.key) {
    case "ArrowDown":
      return { row: Math.min(row + 1, last), column };
    case "ArrowUp":
      return { row: Math.max(row - 1, 0), column };
    case "Enter":
      if (event.shiftKey) return { row: Math.max(row - 1, 0), column };
      if (column === "up") return { row: Math.max(row - 1, 0), column };
      if (row < last) return { row: row + 1, column };
      return column === "down" && two ? { row: last, column: "up" } : { row, column };
    case "ArrowLeft":
      if (event.shiftKey || !at_edge(cell, 0) || column === "depth") return null;
      return { row, column: column === "up" ? "down" : "depth" };
    case "ArrowRight":
      if (event.shiftKey || !at_edge(cell, cell.value.length) || column === "up" || (column === "down" && !two))
        return null;
      return { row, column: column === "depth" ? "down" : "up" };
    default:
      return null;
  }
}

/** The caret stands at this end, or the whole text is selected. */
function at_edge(cell: HTMLInputElement, edge: number): boolean {
  const { selectionStart, selectionEnd, value } = cell;
  if (selectionStart === 0 && selectionEnd === value.length) return true;
  return selectionStart === edge && selectionEnd === edge;
}

function column_of(cell: HTMLInputElement): Column {
  return (cell.dataset.col ?? "down") as Column;
}

function row_of(cell: HTMLInputElement): number {
  const el = cell.closest("tr");
  return el ? from + [...by_id("log-rows").querySelectorAll("tr:not(.room)")].indexOf(el) : -1;
}

/** Puts the focus on a cell and selects what is in it. */
export function focus_cell(row: number, column: Column): void {
  if (row < from || row >= from + WINDOW_ROWS) show_window(row - Math.floor(WINDOW_ROWS / 2));
  const el = by_id("log-rows").querySelectorAll("tr:not(.room)")[row - from];
  const cell = el?.querySelector<HTMLInputElement>(`[data-col="${column}"]`);
  if (!cell) return;
  cell.focus();
  cell.select();
  cell.scrollIntoView({ block: "nearest" });
}

/** Puts the focus on the temperature cell of a reading, or on the depth cell of its row. */
export function focus_entry(entry: number, depth: boolean): void {
  const row = rows.findIndex((one) => one.entries.includes(entry));
  if (row < 0) return;
  if (depth) focus_cell(row, "depth");
  else focus_cell(row, rows[row]?.up?.entry === entry ? "up" : "down");
}

/** Shows the rows of the state. */
export function show_log_table(s: Readonly<State>): void {
  const { log } = s.look;
  rows = log.rows;
  if (log.first_row !== listed_from) {
    listed_from = log.first_row;
    from = 0;
    by_id("log-cells").scrollTop = 0;
  }
  by_id("log-cells").classList.toggle("one", log.one_column);
  const corrected = log.rows.some((row) => row.corrected !== null);
  by_id("log-cells").classList.toggle("corrected", corrected);
  set_text(by_id("log-head-depth"), t(corrected ? "page-log-head-mark" : "page-log-head-depth"));
  set_text(by_id("log-head-down"), t(log.one_column ? "page-log-head-one" : "page-log-head-down"));
  for (const el of by_id("log-table").querySelectorAll<HTMLElement>("[data-temps]"))
    set_text(el, log.fahrenheit ? "°F" : "°C");
  for (const el of by_id("log-table").querySelectorAll<HTMLElement>("[data-two]")) toggle(el, !log.one_column);
  show_window(from);
}

function show_window(wanted: number): void {
  const s = state();
  from = Math.max(0, Math.min(wanted, rows.length - WINDOW_ROWS));
  const shown = rows.slice(from, from + WINDOW_ROWS);
  list(by_id("log-rows"), template("template-row"), shown, (el, row) => show_row(el, row, s));
  set_stops();
  set_attr(by_id("log-table"), "aria-rowcount", rows.length > WINDOW_ROWS ? String(s.look.log.row_count + 1) : null);
  lay();
}

/** One row of the table is in the tab order: that in hand, or the first one in the page. */
function set_stops(): void {
  const all = by_id("log-rows").querySelectorAll<HTMLElement>("tr:not(.room)");
  const stop = all[in_hand - from] ? in_hand - from : 0;
  all.forEach((el, index) => {
    for (const cell of el.querySelectorAll<HTMLInputElement>('[data-col="down"], [data-col="up"]')) {
      cell.tabIndex = index === stop ? 0 : -1;
    }
  });
}

function show_row(el: HTMLElement, row: LogRow, s: Readonly<State>): void {
  const depth = row.depth_text ?? num(row.depth);
  const [of_depth, of_down, of_up] = el.querySelectorAll<HTMLInputElement>("input");
  if (!of_depth || !of_down || !of_up) return;
  if (typing !== of_depth) set_value(of_depth, depth);
  of_depth.readOnly = row.entries.length === 0 || !s.writable;
  of_depth.classList.toggle("whole", row.whole);
  const corrected = row.corrected ? num(row.corrected) : "";
  set_text(part(el, "corrected"), corrected);
  const { one_column } = s.look.log;
  // The names of the cells change rarely and take longer than all the rest.
  const named = `${s.ui.lang} ${depth} ${corrected} ${one_column} ${row.down.out} ${row.up?.out}`;
  const again = el.dataset.named !== named;
  el.dataset.named = named;
  if (again) {
    const name = corrected ? t("page-log-cell-mark", { depth, corrected }) : t("page-log-cell-depth", { depth });
    set_attr(of_depth, "aria-label", name);
  }
  show_cell(of_down, row.down, s);
  if (again) name_cell(of_down, row.down, t(one_column ? "page-log-cell-one" : "page-log-cell-down", { depth }));
  for (const two of el.querySelectorAll<HTMLElement>("[data-two]")) toggle(two, !one_column);
  if (row.up) show_cell(of_up, row.up, s);
  if (row.up && again) name_cell(of_up, row.up, t("page-log-cell-up", { depth }));
  set_text(part(el, "apart"), row.apart ? num(row.apart) : "");
}

function name_cell(input: HTMLInputElement, cell: LogCell, name: string): void {
  set_attr(input, "aria-label", cell.out ? t("page-log-cell-out", { cell: name }) : name);
}

function show_cell(input: HTMLInputElement, cell: LogCell, s: Readonly<State>): void {
  const being_typed = typing === input;
  if (!being_typed) set_value(input, cell.num && !half_typed(cell.text) ? num(cell.num) : cell.text);
  input.readOnly = !s.writable;
  const bad = cell.doubt !== null && !being_typed;
  input.parentElement?.classList.toggle("bad", bad);
  input.parentElement?.classList.toggle("out", cell.out && !bad);
  set_attr(
    input,
    "aria-describedby",
    bad && cell.doubt !== null && state().look.log.doubts.length > cell.doubt ? `log-doubt-${cell.doubt}` : null,
  );
}

/** "17." is shown as it stands, so that a reload in the middle of typing loses no key. */
function half_typed(text: string): boolean {
  return /\D$/.test(text);
}

/** After a reload in the middle of a number the focus is where it was typed. */
export function focus_half_typed(): void {
  const cells = [...by_id("log-rows").querySelectorAll<HTMLInputElement>("input")];
  const half = cells.find((cell) => /\d[.,]$/.test(cell.value));
  half?.focus();
  half?.setSelectionRange(half.value.length, half.value.length);
}

/** Each row at its depth where all fit under one another; else one under the other, scrolling. */
function lay(): void {
  const cells = by_id("log-cells");
  const placed = place();
  const phone = is_stacked();
  const row_px = 1.5 * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const height = cells.clientHeight;
  const trs = [...by_id("log-rows").querySelectorAll<HTMLElement>("tr:not(.room)")];
  const surface = placed?.surface_y_px ?? 2 * row_px;
  cells.style.setProperty("--surface", `${surface}px`);
  const scrolls = !phone && surface - row_px / 2 + rows.length * row_px > height + row_px / 2;
  const long = rows.length > WINDOW_ROWS;
  cells.classList.toggle("scrolls", scrolls || long);
  cells.classList.toggle("at-depths", !phone && !scrolls && !long && placed !== null);
  set_room(long, phone ? 2.75 : 1.5);
  if (!placed || phone || scrolls || long) return;
  const centres = parted(
    rows.map((row) => placed.surface_y_px + row.at_m * placed.px_per_m),
    row_px,
    height - row_px / 2 - 1,
  );
  trs.forEach((tr, index) => {
    const here = centres[index] ?? 0;
    const gaps = [here - (centres[index - 1] ?? -Infinity), (centres[index + 1] ?? Infinity) - here];
    // As high as the nearer neighbour leaves room for, the depth in its middle; the last one ends with the sheet.
    const half = Math.min(...gaps, 1.3 * row_px) / 2;
    const top = Math.round(here - half - 0.75);
    const bottom = Math.min(Math.round(here + half - 0.75) + 1, height);
    tr.style.setProperty("top", `${top}px`);
    tr.style.setProperty("height", `${bottom - top}px`);
    if (index === 0) cells.style.setProperty("--half", `${half}px`);
  });
}

/** Depths in pixels moved apart as little as needed, so that each row has its height. */
function parted(wanted: readonly number[], gap: number, bottom: number): number[] {
  const least = gap - 0.75;
  const out = [...wanted];
  for (let i = 1; i < out.length; i += 1) out[i] = Math.max(out[i] ?? 0, (out[i - 1] ?? 0) + least);
  let limit = bottom;
  for (let i = out.length - 1; i >= 0; i -= 1) {
    out[i] = Math.min(out[i] ?? 0, limit);
    limit = (out[i] ?? 0) - least;
  }
  return out;
}

/** The empty room above and below the rows that are in the page, so that the scroll bar tells the truth. */
function set_room(long: boolean, rem: number): void {
  const body = by_id("log-rows");
  body.style.setProperty("--above", `${long ? from * rem : 0}rem`);
  body.style.setProperty("--below", `${long ? Math.max(0, rows.length - from - WINDOW_ROWS) * rem : 0}rem`);
}

function scrolled(): void {
  if (rows.length <= WINDOW_ROWS) return;
  const cells = by_id("log-cells");
  const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const row_px = (is_stacked() ? 2.75 : 1.5) * root;
  const top = Math.floor(cells.scrollTop / row_px);
  if (top >= from + 10 && top <= from + WINDOW_ROWS - 40) return;
  const wanted = Math.max(0, top - 25);
  if (wanted === from) return;
  const at = document.activeElement instanceof HTMLInputElement ? document.activeElement : null;
  const in_table = at !== null && by_id("log-rows").contains(at);
  const row = in_table ? row_of(at) : -1;
  const column = in_table ? column_of(at) : "down";
  show_window(wanted);
  if (!in_table) return;
  // The cell that had the focus is another row's now: the focus goes with the row, or to the table.
  const scroll = cells.scrollTop;
  if (row >= from && row < from + WINDOW_ROWS) focus_cell(row, column);
  else cells.focus();
  cells.scrollTop = scroll;
}
