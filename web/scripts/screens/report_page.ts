// The printed page: filled with text, never with markup; the picture as vectors from the calculation. On the screen it is
// shown smaller, on paper as it is.

import type { Num, ReadingRow, ReportPage, ReportView } from "../../generated/core";
import { known_ranges } from "../core";
import { list, part, set_text, template, toggle } from "../dom";
import { page_svg } from "../picture";
import { language, num, say, say_into, t } from "../say";
import type { State } from "../state";

/** The page's width in CSS pixels, as in report.css. */
const PAGE_PX = 794;
/** Rows of readings that stand in the column at the right; longer casts take the whole width, in columns of so many. */
const ROWS_AT_THE_RIGHT = 24;
const MOST_COLUMNS = 4;

/** Wires the sheet that shows the page. */
export function mount_page(paper: HTMLElement): { show(s: Readonly<State>, view: ReportView): void } {
  const page = paper.querySelector<HTMLElement>(".page");
  if (page === null) throw new Error("index.html has no .page");
  let drawn = "";

  /** The page as large as the sheet is wide. */
  function fit(): void {
    const scale = paper.clientWidth / PAGE_PX;
    if (scale <= 0) return;
    page?.style.setProperty("--scale", String(scale));
    page?.style.setProperty("margin-bottom", `${((page?.offsetHeight ?? 0) * (scale - 1)).toFixed(1)}px`);
  }
  new ResizeObserver(fit).observe(paper);
  new ResizeObserver(fit).observe(page);

  return {
    show(s, view) {
      show_words(page, view);
      const of = JSON.stringify([view.page, s.look.profile.marks, language(), known_ranges()]);
      if (of !== drawn) {
        drawn = of;
        part(page, "picture").replaceChildren(picture(s));
      }
      fit();
    },
  };
}

/** The picture as elements of the page; it has no style, no script and no link of its own. */
function picture(s: Readonly<State>): Element {
  const made = new DOMParser().parseFromString(page_svg(s), "image/svg+xml");
  return document.importNode(made.documentElement, true);
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

/** All readings: few in one table at the right, many in tables side by side over the whole width. */
function show_readings(el: HTMLElement, page: ReportPage): void {
  const heads = HEADS.filter(({ column }) => page.rows.some((row) => row[column] !== null));
  const wide = page.rows.length > ROWS_AT_THE_RIGHT;
  const columns = wide ? Math.min(MOST_COLUMNS, Math.max(2, Math.floor(20 / heads.length))) : 1;
  const each = Math.ceil(page.rows.length / columns);
  const blocks = Array.from({ length: columns }, (_, i) => page.rows.slice(i * each, (i + 1) * each));
  el.classList.toggle("long", wide);
  list(part(el, "nums"), template("template-report-nums"), blocks, (table, rows) => {
    list(part(table, "heads"), template("template-report-head"), heads, (th, { head }) => set_text(th, t(head)));
    list(part(table, "rows"), template("template-report-row"), rows, (tr, row) => {
      list(tr, template("template-report-cell"), heads, (td, { column }) => set_text(td, cell(row, column)));
    });
  });
  toggle(part(el, "nums"), page.rows.length > 0);
}

function cell(row: ReadingRow, column: Column): string {
  const value: Num | null = row[column];
  return value === null ? "" : num(value);
}
