// The readings as a table beside the picture: each row at its depth where that fits, the cursor shared with the picture.

import type { Num, PlacementView, ReadingRow } from "../generated/core";
import { list, part, set_text, template, toggle } from "./dom";
import { mount_hear, show_hear } from "./hear";
import { type Picture, PLACED } from "./picture";
import { save_touch } from "./save_picture";
import { num, say_into } from "./say";
import { type State, set_ui, state } from "./state";

type Column = "mark" | "down" | "up" | "mean" | "per_metre" | "oxygen" | "per_cent";
const COLUMNS: readonly Column[] = ["mark", "down", "up", "mean", "per_metre", "oxygen", "per_cent"];

/** Rows at their depths are at least this high, in sixteenths of the root size; else the table scrolls. */
const ROW_U = 17;

/** Fills `panel` with the table; `back` is the button that leaves it. */
export function mount_readings(
  panel: HTMLElement,
  figure: HTMLElement,
  picture: Picture,
  save: () => void,
): { show(s: Readonly<State>, back: string): void } {
  panel.append(document.importNode(template("template-readings-parts").content, true));
  const rows = part(panel, "rows");
  const back_button = part(panel, "back");
  back_button.addEventListener("click", () => {
    set_ui({ panel: "main" });
    panel.parentElement?.querySelector<HTMLElement>('[data-view]:not([hidden]) [data-part="to-table"]')?.focus();
  });
  part(panel, "save").addEventListener("click", save);
  part(panel, "touch").addEventListener("click", save_touch);
  mount_hear(part(panel, "hear"));

  function go_to(row: number): void {
    const s = state();
    const reading = s.look.readings.findIndex((one) => one.row === row);
    if (reading >= 0) set_ui({ cursor: reading });
  }

  function row_of(event: Event): number {
    const el = event.target instanceof Element ? event.target.closest("tr") : null;
    return el === null ? -1 : [...rows.children].indexOf(el);
  }

  rows.addEventListener("click", (event) => {
    const row = row_of(event);
    if (row >= 0) go_to(row);
  });
  rows.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const row = row_of(event);
    const last = rows.children.length - 1;
    if (event.key === "Escape") return set_ui({ cursor: null });
    const next = { ArrowDown: Math.min(last, row + 1), ArrowUp: Math.max(0, row - 1), Home: 0, End: last }[event.key];
    if (row < 0 || next === undefined) return;
    event.preventDefault();
    go_to(next);
    (rows.children[next] as HTMLElement | undefined)?.focus();
  });

  /** Rows stand at their depths where the picture stands beside the table and leaves each enough room. */
  function lay(place: PlacementView | null): void {
    const depths = state().look.profile.table.map((row) => row.depth.value);
    const gap_m = Math.min(...depths.slice(1).map((depth, index) => depth - (depths[index] ?? depth)));
    const root_px = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const beside = panel.getBoundingClientRect().left >= figure.getBoundingClientRect().right - 1;
    const on_top = panel.parentElement?.firstElementChild === panel || no_notice(panel);
    const room_px = place === null ? 0 : place.px_per_m * gap_m;
    const fits = beside && on_top && room_px >= (ROW_U * root_px) / 16;
    panel.classList.toggle("at-depths", fits);
    const row_px = Math.min(room_px, (24 * root_px) / 16);
    if (fits) panel.style.setProperty("--row-px", `${row_px}px`);
    else panel.style.removeProperty("--row-px");
  }
  figure.addEventListener(PLACED, (event) => {
    if (!panel.hidden) lay((event as CustomEvent<PlacementView>).detail);
  });

  return {
    show(s, back) {
      const table = s.look.profile.table;
      set_text(back_button, back);
      show_hear(part(panel, "hear"));
      const used = new Set(COLUMNS.filter((column) => table.some((row) => row[column] !== null)));
      for (const head of panel.querySelectorAll<HTMLElement>("thead [data-column]")) {
        toggle(head, used.has(head.dataset.column as Column));
      }
      const more = part(panel, "more");
      toggle(more, s.look.profile.more_rows !== null);
      if (s.look.profile.more_rows !== null) say_into(more, s.look.profile.more_rows);
      toggle(part(panel, "covered"), !used.has("per_metre"));
      list(part(panel, "notes"), template("template-line"), s.look.profile.table_notes, (el, said) =>
        say_into(el, said),
      );
      panel.classList.toggle("wide", used.has("mark") || used.has("oxygen"));
      const in_hand = s.ui.cursor === null ? null : (s.look.readings[s.ui.cursor]?.row ?? null);
      list(rows, template("template-readings-row"), table, (el, row, index) => {
        fill(el, row, used);
        el.classList.toggle("on", index === in_hand);
        el.tabIndex = index === (in_hand ?? 0) ? 0 : -1;
        if (index === in_hand) el.setAttribute("aria-current", "true");
        else el.removeAttribute("aria-current");
      });
      lay(picture.placement());
      if (in_hand !== null && !panel.classList.contains("at-depths")) {
        rows.children[in_hand]?.scrollIntoView({ block: "nearest" });
      }
    },
  };
}

/** Nothing that is shown stands above the panel in its sheet. */
function no_notice(panel: HTMLElement): boolean {
  const before = [...(panel.parentElement?.children ?? [])];
  return before.slice(0, before.indexOf(panel)).every((el) => (el as HTMLElement).offsetHeight === 0);
}

function fill(el: HTMLElement, row: ReadingRow, used: ReadonlySet<Column>): void {
  const depth = part(el, "depth");
  set_text(depth, num(row.depth));
  depth.classList.toggle("whole", row.whole);
  el.style.setProperty("--depth", String(row.depth.value));
  for (const cell of el.querySelectorAll<HTMLElement>("[data-column]")) {
    const column = cell.dataset.column as Column;
    toggle(cell, used.has(column));
    const value: Num | null = row[column];
    set_text(cell, value === null ? "" : num(value));
  }
}
