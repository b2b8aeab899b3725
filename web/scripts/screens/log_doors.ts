// What stands behind the doors of Log's panel: the list of corrections, and oxygen with the Secchi disk.

import type {
  CompanionField,
  CorrectionFieldView,
  CorrectionView,
  LogView,
  OxygenRow,
  Said,
} from "../../generated/core";
import { by_id, focus_seen, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { num, say, say_into, speak, t } from "../say";
import { dispatch, type State, set_ui, state } from "../state";
import { show_ways } from "../ways";

/** A doubt about half a number waits until the typing has rested this long, milliseconds. */
const REST_MS = 1000;

const COMPANIONS: readonly { id: string; companion: CompanionField; text: (log: LogView) => string }[] = [
  { id: "companion-gone", companion: "secchi_gone", text: (log) => log.companions.secchi_gone },
  { id: "companion-back", companion: "secchi_back", text: (log) => log.companions.secchi_back },
  { id: "companion-altitude", companion: "altitude", text: (log) => log.companions.altitude },
];

let last_key = 0;
let rest: ReturnType<typeof setTimeout> | null = null;
let show_again: () => void = () => {};

/** Wires the doors. `shown` shows them again once typing has rested. */
export function mount_log_doors(shown: () => void): void {
  show_again = shown;
  for (const door of ["corrections", "companions"] as const) {
    by_id(`log-to-${door}`).addEventListener("click", () => {
      set_ui({ log_door: door });
      by_id(`${door}-title`).focus();
    });
    by_id(`${door}-done`).addEventListener("click", () => {
      set_ui({ log_door: null });
      focus_seen(by_id(`log-to-${door}`));
    });
    by_id(`${door}-undo`).addEventListener("click", () => {
      const { undo } = state().look.log;
      if (!undo) return;
      dispatch(undo.action, () => {
        rested();
        keep_focus(door);
      });
    });
  }
  by_id("corrections-list").addEventListener("input", (event) => {
    const field = event.target;
    if (!(field instanceof HTMLInputElement)) return;
    const correction = Number(field.dataset.correction);
    const input = field.dataset.input as CorrectionFieldView["input"];
    typed();
    dispatch({ do: "set_correction", correction, input, text: field.value });
  });
  for (const { id, companion } of COMPANIONS) {
    const field = by_id<HTMLInputElement>(id);
    field.addEventListener("input", () => {
      typed();
      dispatch({ do: "set_companion", companion, text: field.value });
    });
  }
  const rows = by_id("companions-rows");
  rows.addEventListener("input", (event) => {
    const field = event.target;
    if (!(field instanceof HTMLInputElement)) return;
    const row = state().look.log.companions.rows[Number(field.dataset.row)];
    const cell = row?.cells[Number(field.dataset.cell)];
    if (!row || !cell) return;
    typed();
    dispatch({ do: "set_oxygen", entry: cell.entry, depth_m: row.depth.value, text: field.value });
  });
  rows.addEventListener("keydown", (event) => {
    const at = event.target;
    if (!(at instanceof HTMLInputElement) || event.altKey || event.ctrlKey || event.metaKey || event.isComposing)
      return;
    const step = { ArrowDown: 1, ArrowUp: -1, Enter: event.shiftKey ? -1 : 1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const all = [...rows.querySelectorAll<HTMLInputElement>(`input[data-cell="${at.dataset.cell}"]`)];
    const next = all[all.indexOf(at) + step];
    next?.focus();
    next?.select();
  });
  for (const id of ["log-corrections", "log-companions"]) by_id(id).addEventListener("focusout", rested);
}

function typed(): void {
  last_key = performance.now();
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(show_again, REST_MS + 20);
}

function rested(): void {
  if (last_key === 0) return;
  last_key = 0;
  show_again();
}

function is_typing(): boolean {
  return last_key > 0 && performance.now() - last_key < REST_MS;
}

/** A press that took its own button away leaves the focus at the title of the door. */
function keep_focus(door: "corrections" | "companions"): void {
  const at = document.activeElement;
  if (at instanceof HTMLElement && at !== document.body && at.offsetParent !== null) return;
  by_id(`${door}-title`).focus();
}

/** Shows what stands behind the open door. */
export function show_log_doors(s: Readonly<State>): void {
  const door = s.ui.log_door;
  if (door !== "corrections" && door !== "companions") return;
  const { log } = s.look;
  const undo = by_id(`${door}-undo`);
  toggle(undo, log.undo !== null);
  if (log.undo) set_text(undo, say(log.undo.label));
  if (door === "corrections") show_corrections(log, s.writable);
  else show_companions(log, s.writable);
}

function show_corrections({ corrections }: LogView, writable: boolean): void {
  toggle(by_id("corrections-lag"), corrections.lag !== null);
  if (corrections.lag) say_into(by_id("corrections-lag-text"), corrections.lag.text);
  show_ways(by_id("corrections-lag-ways"), corrections.lag ? [corrections.lag.way] : [], { small: true, press: added });
  list(by_id("corrections-list"), template("template-correction"), corrections.items, (el, one, index) =>
    show_correction(el, one, index, writable),
  );
  show_ways(by_id("corrections-ways"), corrections.ways, { small: true, press: added });
}

/** A correction that was added has the focus in its first field. */
function added(action: CorrectionView["remove"]["action"]): boolean {
  dispatch(action, () => {
    const last = by_id("corrections-list").lastElementChild;
    const field = last?.querySelector<HTMLElement>("input");
    field?.focus();
    last?.scrollIntoView({ block: "nearest" });
    const item = state().look.log.corrections.items.at(-1);
    if (item) speak(say(item.about));
  });
  return true;
}

function show_correction(el: HTMLElement, one: CorrectionView, index: number, writable: boolean): void {
  say_into(part(el, "title"), one.title);
  say_into(part(el, "about"), one.about);
  const remove = part<HTMLButtonElement>(el, "remove");
  set_text(remove, say(one.remove.label));
  set_attr(remove, "aria-label", t("page-corrections-remove", { what: say(one.title) }));
  remove.onclick = () =>
    dispatch(one.remove.action, () => {
      rested();
      by_id("corrections-title").focus();
    });
  const said = part(el, "said");
  said.id = `correction-said-${index}`;
  list(part(el, "fields"), template("template-correction-field"), one.fields, (field_el, field) => {
    const label = part<HTMLLabelElement>(field_el, "label");
    const input = part<HTMLInputElement>(field_el, "input");
    input.id = `correction-${index}-${field.input}`;
    input.dataset.correction = String(index);
    input.dataset.input = field.input;
    // Keyboards of phones for decimals have no minus.
    set_attr(input, "inputmode", field.input === "ice" || field.input === "gap" ? "text" : "decimal");
    input.readOnly = !writable;
    label.htmlFor = input.id;
    say_into(label, field.label);
    set_value(input, field.text);
    set_attr(input, "aria-describedby", said.id);
  });
  const in_hand = el.contains(document.activeElement) && is_typing();
  if (in_hand && one.doubted) return;
  for (const [at, field] of one.fields.entries()) {
    part(el, "fields").children[at]?.classList.toggle("bad", field.odd);
  }
  el.classList.toggle("doubted", one.doubted);
  say_into(said, one.said);
}

function show_companions(log: LogView, writable: boolean): void {
  const { companions } = log;
  for (const { id, companion, text } of COMPANIONS) {
    const field = by_id<HTMLInputElement>(id);
    set_value(field, text(log));
    field.readOnly = !writable;
    field.parentElement?.classList.toggle("bad", companions.odd === companion && !is_typing());
  }
  const said: readonly Said[] = is_typing() && companions.odd !== null ? companions.said.slice(1) : companions.said;
  list(by_id("companions-said"), template("template-line"), said, (el, one) => say_into(el, one));
  list(by_id("companions-rows"), template("template-oxygen-row"), companions.rows, (el, row, index) =>
    show_oxygen(el, row, index, writable),
  );
}

function show_oxygen(el: HTMLElement, row: OxygenRow, index: number, writable: boolean): void {
  const depth = num(row.depth);
  set_text(part(el, "depth"), depth);
  list(part(el, "cells"), template("template-oxygen-cell"), row.cells, (input_el, cell, at) => {
    const input = input_el as HTMLInputElement;
    input.dataset.row = String(index);
    input.dataset.cell = String(at);
    input.readOnly = !writable;
    set_value(input, cell.text);
    input.classList.toggle("bad", cell.odd && !(input === document.activeElement && is_typing()));
    set_attr(input, "aria-label", t("page-companions-cell", { depth }));
  });
  set_text(part(el, "share"), row.per_cent ? num(row.per_cent) : "");
}
