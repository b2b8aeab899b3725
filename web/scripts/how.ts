// "How it is computed", the page for teachers: every rule in words and as a formula, with its source, and one cast worked by
// hand. It takes the place of the work; its words are one list of messages, shown by the ending of their ids.

import { close_menu } from "./bar";
import { by_id } from "./dom";
import { line_into, t_lines } from "./say";

/** In the order of reading. "-title" begins a section; a line of "-text" or "-formula" is a paragraph, of "-table" a row. */
const WORDS = [
  "how-intro-text",
  "how-checks-title",
  "how-checks-text",
  "how-checks-formula",
  "how-checks-source",
  "how-corrections-title",
  "how-corrections-text",
  "how-corrections-formula",
  "how-corrections-source",
  "how-pairs-title",
  "how-pairs-text",
  "how-pairs-formula",
  "how-pairs-source",
  "how-steps-title",
  "how-steps-text",
  "how-steps-formula",
  "how-steps-source",
  "how-state-title",
  "how-state-text",
  "how-state-formula",
  "how-state-source",
  "how-thermocline-title",
  "how-thermocline-text",
  "how-thermocline-formula",
  "how-thermocline-source",
  "how-second-title",
  "how-second-text",
  "how-second-formula",
  "how-second-source",
  "how-metalimnion-title",
  "how-metalimnion-text",
  "how-metalimnion-formula",
  "how-metalimnion-source",
  "how-warm-title",
  "how-warm-text",
  "how-warm-source",
  "how-mixed-title",
  "how-mixed-text",
  "how-mixed-formula",
  "how-mixed-source",
  "how-others-title",
  "how-others-text",
  "how-others-formula",
  "how-others-source",
  "how-chance-title",
  "how-chance-text",
  "how-chance-formula",
  "how-chance-source",
  "how-density-title",
  "how-density-text",
  "how-density-formula",
  "how-density-source",
  "how-stability-title",
  "how-stability-text",
  "how-stability-formula",
  "how-stability-source",
  "how-oxygen-title",
  "how-oxygen-text",
  "how-oxygen-formula",
  "how-oxygen-source",
  "how-whatif-title",
  "how-whatif-text",
  "how-whatif-formula",
  "how-whatif-source",
  "how-compare-title",
  "how-compare-text",
  "how-compare-formula",
  "how-compare-source",
  "how-worked-title",
  "how-worked-text",
  "how-worked-pairs-text",
  "how-worked-steps-text",
  "how-worked-steps-table",
  "how-worked-thermocline-text",
  "how-worked-mixed-text",
  "how-worked-metalimnion-text",
  "how-worked-state-text",
  "how-worked-schmidt-text",
  "how-worked-n2-text",
  "how-worked-rules-text",
  "how-worked-rules-table",
  "how-worked-chance-text",
  "how-worked-oxygen-text",
  "how-worked-probe-text",
] as const;

/** Wires the way in from Help and the ways back. */
export function mount_how(): void {
  const page = by_id<HTMLDialogElement>("how");
  by_id("help-how").addEventListener("click", () => {
    close_menu();
    fill();
    page.showModal();
    by_id("how-title").focus();
    page.scrollTo(0, 0);
  });
  by_id("how-back").addEventListener("click", () => page.close());
  page.addEventListener("close", () => {
    // The example's depths are worked out there: they do not stay in the page.
    by_id("how-words").replaceChildren();
    by_id("bar-help").focus();
  });
}

/** Writes the words, in the language of now. */
function fill(): void {
  const list: Element[] = [];
  const words: Element[] = [];
  for (const id of WORDS) {
    const lines = t_lines(id);
    if (id.endsWith("-title")) {
      const title = made("h2", lines[0]);
      title.tabIndex = -1;
      words.push(title);
      list.push(entry(title));
    } else if (id.endsWith("-table")) words.push(table(lines));
    else for (const line of lines) words.push(made("p", line, id.slice(id.lastIndexOf("-") + 1)));
  }
  by_id("how-list").replaceChildren(...list);
  by_id("how-words").replaceChildren(...words);
}

/** A line of the list: leads to its section. */
function entry(title: HTMLElement): Element {
  const item = document.createElement("li");
  const way = made("button", title.textContent ?? "", "link");
  way.addEventListener("click", () => {
    title.focus({ preventScroll: true });
    title.scrollIntoView();
  });
  item.append(way);
  return item;
}

/** The first row is the head; the first cell of each other row names it. */
function table(lines: readonly string[]): Element {
  const all = document.createElement("table");
  for (const [at, line] of lines.entries()) {
    const row = document.createElement("tr");
    for (const [column, cell] of line.split(" | ").entries()) {
      const el = made(at === 0 || column === 0 ? "th" : "td", cell);
      if (el instanceof HTMLTableCellElement && el.tagName === "TH") el.scope = at === 0 ? "col" : "row";
      row.append(el);
    }
    all.append(row);
  }
  return all;
}

function made(tag: "h2" | "p" | "button" | "th" | "td", line = "", kind = ""): HTMLElement {
  const el = document.createElement(tag);
  el.className = kind;
  line_into(el, line);
  return el;
}
