// A question first, and "Not right?": the rows as they came, with heads that can be set right.

import type { Action, PendingColumn, PendingRow, PendingView, Role, Said, Unit } from "../../generated/core";
import { by_id, list, part, set_attr, set_text, template, toggle } from "../dom";
import { say, say_into, speak, t } from "../say";
import { dispatch, on_show, type State, state } from "../state";
import { show_ways } from "../ways";

/** Columns in the page at most; a table with more is asked about by its question. */
const COLUMNS_AT_ONCE = 30;

const ROLES: readonly Role[] = ["depth", "down", "up", "one", "leg", "oxygen", "secchi", "not_used"];

/** Wires the view. */
export function mount_table_view(): void {
  by_id("asis-roles").addEventListener("change", (event) => {
    const select = event.target;
    if (!(select instanceof HTMLSelectElement) || select.value === "") return;
    const column = Number(select.dataset.column);
    if (select.dataset.part === "role") dispatch({ do: "set_role", column, role: select.value as Role });
    else dispatch({ do: "set_unit", column, unit: select.value as Unit });
  });
  by_id("pending-use").addEventListener("click", () => {
    const way = state().look.log.pending?.use_table;
    if (way && way.waits === null) settle(way.action);
  });
  by_id("pending-drop").addEventListener("click", () => {
    const way = state().look.log.pending?.drop;
    if (way) settle(way.action);
  });
  on_show(show_table_view);
}

/** The view may close by this: then the focus goes to what is next. */
function settle(action: Action): void {
  dispatch(action, settled);
}

function settled(): void {
  const { log, empty } = state().look;
  const at = document.activeElement;
  if (at instanceof HTMLElement && at !== document.body && at.offsetParent !== null) return;
  const places = log.pending
    ? ["#pending-ways button", "#pending-use"]
    : ["#log-doubts button", "#log-profile", "#log-type"];
  const next = places
    .map((one) => document.querySelector<HTMLElement>(one))
    .find((el) => el && el.offsetParent !== null);
  next?.focus();
  if (!empty) speak(say(log.title));
}

function show_table_view(s: State): void {
  const { pending, title } = s.look.log;
  if (s.look.place.screen !== "log" || !pending) return;
  show_panel(pending, title);
  const columns = pending.columns.slice(0, COLUMNS_AT_ONCE);
  say_into(by_id("asis-head"), pending.head);
  by_id("log-asis").style.setProperty("--columns", String(columns.length));
  list(by_id("asis-roles"), template("template-asis-head"), columns, show_head);
  list(by_id("asis-rows"), template("template-asis-row"), pending.rows, (el, row) => show_row(el, row, columns));
  toggle(by_id("asis-more"), pending.more !== null);
  if (pending.more) say_into(by_id("asis-more-said"), pending.more);
  set_attr(by_id("asis-more-said"), "colspan", String(Math.max(1, columns.length)));
  toggle(by_id("asis-gives"), pending.gives !== null);
  if (pending.gives) say_into(by_id("asis-gives"), pending.gives);
}

function show_panel(pending: PendingView, title: Said): void {
  const { question } = pending;
  say_into(by_id("pending-title"), title);
  toggle(by_id("pending-understood"), pending.understood !== null);
  if (pending.understood) say_into(by_id("pending-understood"), pending.understood);
  toggle(by_id("pending-question"), question !== null);
  if (question) {
    say_into(by_id("pending-ask"), question.title);
    say_into(by_id("pending-text"), question.text);
  }
  show_ways(by_id("pending-ways"), question?.ways ?? [], {
    small: true,
    press: (action) => {
      settle(action);
      return true;
    },
  });
  list(by_id("pending-notices"), template("template-line"), pending.notices, (el, said) => say_into(el, said));
  const use = by_id("pending-use");
  const { waits } = pending.use_table;
  toggle(use, !pending.is_error);
  set_text(use, say(pending.use_table.label));
  set_attr(use, "aria-disabled", waits ? "true" : null);
  set_attr(use, "aria-describedby", waits ? "pending-foot" : null);
  set_text(by_id("pending-drop"), say(pending.drop.label));
  if (waits) say_into(by_id("pending-foot"), waits);
  else set_text(by_id("pending-foot"), t("page-pending-foot"));
}

function show_head(el: HTMLElement, column: PendingColumn, index: number): void {
  const role = part<HTMLSelectElement>(el, "role");
  const roles = ROLES.map((one) => ({ value: one as string, words: role_words(one) }));
  if (column.role_open)
    roles.unshift({ value: "", words: t("page-asis-role-open", { role: role_words(column.role) }) });
  fill_select(role, roles, column.role_open ? "" : column.role, index);
  role.classList.toggle("asked", column.role_open);
  set_attr(role, "aria-label", t("page-asis-role-label", { column: index + 1 }));

  const unit = part<HTMLSelectElement>(el, "unit");
  const units = units_of(column.role).map((one) => ({ value: one as string, words: unit_words(one) }));
  const open = column.unit_open || column.unit === null;
  if (open) units.unshift({ value: "", words: t("page-asis-unit-open") });
  toggle(unit, units_of(column.role).length > 0 && !column.role_open);
  fill_select(unit, units, open ? "" : (column.unit ?? ""), index);
  unit.classList.toggle("asked", column.unit_open);
  set_attr(unit, "aria-label", t("page-asis-unit-label", { column: index + 1 }));
}

function fill_select(
  select: HTMLSelectElement,
  options: readonly { value: string; words: string }[],
  value: string,
  column: number,
): void {
  select.dataset.column = String(column);
  list(select, template("template-option"), options, (el, one) => {
    (el as HTMLOptionElement).value = one.value;
    set_text(el, one.words);
  });
  if (select.value !== value) select.value = value;
}

function show_row(el: HTMLElement, row: PendingRow, columns: readonly PendingColumn[]): void {
  const line = part(el, "line");
  const written = row.cells.filter((cell) => cell.trim() !== "");
  const as_title = row.skipped !== null && written.length <= 1;
  el.classList.toggle("no-reading", row.skipped !== null);
  set_text(line, String(row.line));
  const cells = as_title ? [written[0] ?? ""] : columns.map((_, index) => row.cells[index] ?? "");
  list(el, template("template-asis-cell"), cells, (td, text, index) => {
    const reason = row.skipped && (as_title || index === cells.length - 1) ? say(row.skipped) : "";
    set_text(td, as_title && reason ? `${text}  (${reason})` : text);
    set_attr(td, "title", !as_title && reason ? reason : null);
    set_attr(td, "colspan", as_title ? String(Math.max(1, columns.length)) : null);
    td.classList.toggle("off", !as_title && columns[index]?.role === "not_used");
  });
}

function units_of(role: Role): readonly Unit[] {
  switch (role) {
    case "depth":
    case "secchi":
      return ["m", "cm", "ft"];
    case "down":
    case "up":
    case "one":
      return ["c", "f"];
    default:
      return [];
  }
}

function role_words(role: Role): string {
  switch (role) {
    case "depth":
      return t("page-asis-role-depth");
    case "down":
      return t("page-asis-role-down");
    case "up":
      return t("page-asis-role-up");
    case "one":
      return t("page-asis-role-one");
    case "leg":
      return t("page-asis-role-leg");
    case "oxygen":
      return t("page-asis-role-oxygen");
    case "secchi":
      return t("page-asis-role-secchi");
    case "not_used":
      return t("page-asis-role-not-used");
  }
}

function unit_words(unit: Unit): string {
  switch (unit) {
    case "m":
      return t("page-asis-unit-m");
    case "cm":
      return t("page-asis-unit-cm");
    case "ft":
      return t("page-asis-unit-ft");
    case "c":
      return t("page-asis-unit-c");
    case "f":
      return t("page-asis-unit-f");
  }
}
