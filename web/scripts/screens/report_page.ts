// The printed page: filled with text, never with markup; the picture as vectors from the calculation. On the screen it is
// shown smaller, on paper as it is.

import type { Num, ReadingRow, ReportPage, ReportView } from "../../generated/core";
import { hand_in_lines, known_ranges } from "../core";
import { list, part, set_attr, set_text, template, toggle } from "../dom";
import { is_long } from "../long";
import { page_svg } from "../picture";
import { language, num, say, say_into, t } from "../say";
import { type State, state } from "../state";

/** The page's width in CSS pixels, as in report.css. */
const PAGE_PX = 794;
/** Between its parts, as in report.css. */
const GAP_PX = 9;
/** Letter is the shorter paper: 965 lie between its margins; it is the wider one too, where the picture is 11 higher. */
const LEAST_PAPER_PX = 945;
/** Sizes of the page's text; what does not fit at the last one goes on a second page. */
const SIZES = [1, 0.96, 0.92, 0.88];
/** Rows of readings that stand in the column at the right; longer casts take the whole width, in so many blocks. */
const ROWS_AT_THE_RIGHT = 24;
/** More rows than these are not a table but a text a column: each cell adds a hundred bytes to the printed file. */
const ROWS_OF_A_TABLE = 16;
const MOST_BLOCKS = 4;

/** The lines of the page's own data come this long after the last key, milliseconds; before printing at once. */
const PAUSE_MS = 600;

/** The page. */
export interface Page {
  /** The element. */
  el: HTMLElement;
  /** Shows what the state has. */
  show(s: Readonly<State>, view: ReportView): void;
  /** Brings the page's own data up to date, for paper or a file. */
  ready(): void;
}

/** Wires the sheet that shows the page. */
export function mount_page(paper: HTMLElement): Page {
  const page = paper.querySelector<HTMLElement>(".page");
  if (page === null) throw new Error("index.html has no .page");
  let drawn = "";
  let carried = "";
  let timer = 0;

  /** Sets a full page a little smaller, as far as it can still be read. */
  function fill(): void {
    for (const size of SIZES) {
      page?.style.setProperty("--fit", String(size));
      if (page && height_of(page) <= LEAST_PAPER_PX) return;
    }
  }

  /** The page as large as the sheet is wide. */
  function fit(): void {
    const scale = paper.clientWidth / PAGE_PX;
    if (scale <= 0) return;
    page?.style.setProperty("--scale", String(scale));
    page?.style.setProperty("margin-bottom", `${((page?.offsetHeight ?? 0) * (scale - 1)).toFixed(1)}px`);
  }
  /** The hand-in as lines, at the foot of the page: what copies the page's text copies them too. */
  function ready(): void {
    clearTimeout(timer);
    const { notebook, look } = state();
    if (look.place.screen !== "report" || notebook === carried) return;
    carried = notebook;
    const lines = is_long(notebook) ? "" : hand_in_lines(notebook).replaceAll("\n", " ");
    set_text(part(page as HTMLElement, "data"), lines && `${t("report-data")} ${lines}`);
    fill();
  }
  addEventListener("beforeprint", ready);
  new ResizeObserver(fit).observe(paper);
  new ResizeObserver(fit).observe(page);

  return {
    el: page,
    ready,
    show(s, view) {
      show_words(page, view);
      const of = JSON.stringify([view.page, s.look.profile.marks, language(), known_ranges()]);
      if (of !== drawn) {
        drawn = of;
        part(page, "picture").replaceChildren(picture(s));
      }
      fill();
      fit();
      clearTimeout(timer);
      timer = setTimeout(ready, PAUSE_MS);
    },
  };
}

/** How high everything on the page is together, pixels. */
function height_of(page: HTMLElement): number {
  const parts = [...page.children].filter((one): one is HTMLElement => one instanceof HTMLElement);
  const heights = parts.map((one) => one.offsetHeight).filter((height) => height > 0);
  return heights.reduce((sum, height) => sum + height + GAP_PX, -GAP_PX);
}

/** The picture as elements of the page; it has no style, no script and no link of its own. */
function picture(s: Readonly<State>): Element {
  const made = new DOMParser().parseFromString(page_svg(s), "image/svg+xml");
  const drawing = document.importNode(made.documentElement, true);
  // The same to look at, and no group for each: paper of half the size in bytes.
  for (const el of drawing.querySelectorAll("[opacity]")) {
    const opacity = el.getAttribute("opacity");
    for (const name of ["fill-opacity", "stroke-opacity"]) set_attr(el, name, opacity);
    el.removeAttribute("opacity");
  }
  return drawing;
}

function show_words(el: HTMLElement, view: ReportView): void {
  const page = view.page;
  set_text(part(el, "water"), page.water);
  set_text(part(el, "place"), page.place.map(say).join(" · "));
  set_text(part(el, "who"), page.who.map(say).join(" · "));
  const title = view.parts.find((one) => one.part === "title")?.text.trim() ?? "";
  set_text(part(el, "title"), title || t("report-no-title"));
  part(el, "title").classList.toggle("none", title === "");
  say_into(part(el, "caption"), page.caption);
  set_text(part(el, "caption-marks"), page.caption_marks === null ? "" : say(page.caption_marks));
  list(part(el, "found"), template("template-report-found"), page.found, (row, one) => {
    set_text(part(row, "name"), say(one.name));
    set_text(part(row, "rule"), one.rule === null ? "" : say(one.rule));
    set_text(part(row, "depth"), one.value === null ? say(one.unit) : `${num(one.value)}\u00A0${say(one.unit)}`);
    part(row, "depth").classList.toggle("words", one.value === null);
    set_text(part(row, "range"), one.range === null ? "" : say(one.range));
    set_text(part(row, "marked"), one.marked === null ? "" : say(one.marked));
  });
  list(part(el, "found-notes"), template("template-line"), page.found_notes, say_into);
  const written = view.parts.filter((one) => one.part !== "title" && one.text.trim() !== "");
  list(part(el, "own"), template("template-report-own"), written, (block, one) => {
    const [head, words] = [block.querySelector("h2"), block.querySelector("p")];
    if (head !== null) set_text(head, say(one.name));
    if (words !== null) set_text(words, one.text.trim());
  });
  show_readings(el, page);
  list(part(el, "notes"), template("template-line"), page.notes, say_into);
  set_text(part(el, "how"), page.how.map(say).join(" "));
}

type Column = "depth" | "mark" | "down" | "up" | "mean" | "per_metre" | "oxygen" | "per_cent";

const HEADS: readonly { column: Column; head: string }[] = [
  { column: "depth", head: "page-readings-depth" },
  { column: "mark", head: "page-readings-mark" },
  { column: "down", head: "page-readings-down" },
  { column: "up", head: "page-readings-up" },
  { column: "mean", head: "page-readings-mean" },
  { column: "per_metre", head: "page-readings-per-metre" },
  { column: "oxygen", head: "page-readings-oxygen" },
  { column: "per_cent", head: "page-readings-per-cent" },
];

/** All readings: few as a table, more as a text a column; at the right, or over the whole width in blocks. */
function show_readings(el: HTMLElement, page: ReportPage): void {
  const heads = HEADS.filter(({ column }) => page.rows.some((row) => row[column] !== null));
  const wide = page.rows.length > ROWS_AT_THE_RIGHT;
  el.classList.toggle("long", wide);
  const is_table = page.rows.length <= ROWS_OF_A_TABLE;
  toggle(part(el, "table"), is_table);
  toggle(part(el, "columns"), !is_table);
  list(part(el, "heads"), template("template-report-head"), heads, (th, { head }) => set_text(th, t(head)));
  list(part(el, "rows"), template("template-report-row"), is_table ? page.rows : [], (tr, row) => {
    list(tr, template("template-report-cell"), heads, (td, { column }) => set_text(td, cell(row, column)));
  });
  const blocks = wide ? Math.min(MOST_BLOCKS, Math.max(2, Math.floor(20 / heads.length))) : is_table ? 0 : 1;
  const each = Math.ceil(page.rows.length / blocks);
  const parts = Array.from({ length: blocks }, (_, i) => page.rows.slice(i * each, (i + 1) * each));
  list(part(el, "columns"), template("template-report-block"), parts, (block, rows) => {
    list(block, template("template-report-column"), heads, (div, { column, head }) => {
      set_text(part(div, "head"), t(head));
      // Every block has as many lines, so that the heads end at one height.
      const lines = Array.from({ length: each }, (_, i) => (rows[i] && cell(rows[i], column)) || "\u00A0");
      set_text(part(div, "cells"), lines.join("\n"));
    });
  });
}

function cell(row: ReadingRow, column: Column): string {
  const value: Num | null = row[column];
  return value === null ? "" : num(value);
}
