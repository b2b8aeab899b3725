// Report: the writing with the group's own numbers at hand, what is handed in, and the page as it will print.

import type { ReportPart, ReportView, ReportWord, Said } from "../../generated/core";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { focus_is_lost } from "../focus";
import { say, say_into, t, t_into } from "../say";
import { dispatch, on_show, type State, state } from "../state";
import { field } from "./log";
import { mount_report_files } from "./report_files";
import { mount_page } from "./report_page";

/** Makes the screen work. */
export function mount_report(): void {
  const panel = by_id("report-panel");
  const hand_in = by_id("report-hand-in");
  const parts = part(panel, "parts");
  const tools = part(panel, "tools");
  const page = mount_page(by_id("report-paper"));
  let here = false;
  /** The text that the buttons put into: the one that had the focus last. */
  let into: ReportPart = "claim";

  const fields = (): HTMLTextAreaElement[] => [...parts.querySelectorAll("textarea")];
  const part_of = (field: HTMLTextAreaElement): ReportPart | undefined =>
    state().look.report?.parts[fields().indexOf(field)]?.part;

  parts.addEventListener("input", ({ target }) => {
    const which = target instanceof HTMLTextAreaElement ? part_of(target) : undefined;
    if (which !== undefined && target instanceof HTMLTextAreaElement) {
      dispatch({ do: "set_report", part: which, text: target.value });
    }
  });
  parts.addEventListener("keydown", (event) => {
    // The title is one line.
    if (event.key === "Enter" && event.target === fields()[0]) event.preventDefault();
  });
  parts.addEventListener("focusin", ({ target }) => {
    const which = target instanceof HTMLTextAreaElement ? part_of(target) : undefined;
    if (which === undefined || which === "title" || which === into) return;
    into = which;
    place_tools();
    show(state());
  });
  tools.addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest("button") : null;
    const text = button?.dataset.put;
    if (text !== undefined) put_in(text);
  });
  field("report-class", (text) => ({ do: "set_class", text }));
  field("report-seat", (text) => ({ do: "set_seat", text }));
  mount_report_files(hand_in, page);

  /** Puts words in where the caret stands, with a space where one is missing. */
  function put_in(text: string): void {
    const field = fields()[index_of(state().look.report, into)];
    if (field === undefined) return;
    const before = field.value.slice(0, field.selectionStart);
    const gap = before === "" || /[\s(–-]$/.test(before) ? "" : " ";
    field.setRangeText(gap + text, field.selectionStart, field.selectionEnd, "end");
    dispatch({ do: "set_report", part: into, text: field.value });
    field.focus();
  }

  /** The buttons stand under the text they put into. */
  function place_tools(): void {
    const field = fields()[index_of(state().look.report, into)];
    const under = field?.closest(".write");
    if (under && tools.parentElement !== under) under.append(tools);
    toggle(tools, true);
  }

  function show(s: Readonly<State>): void {
    const arrived = s.look.place.screen === "report" && !here;
    here = s.look.place.screen === "report";
    const view = s.look.report;
    if (!here || view === null) return;
    const not_yet = part(panel, "not-yet");
    toggle(not_yet, view.not_yet !== null);
    if (view.not_yet !== null) say_into(not_yet, view.not_yet);
    list(parts, template("template-report-part"), view.parts, (el, one) => {
      const field = el.querySelector("textarea");
      const label = el.querySelector("label");
      if (field === null || label === null) return;
      field.id = `report-${one.part}`;
      label.htmlFor = field.id;
      field.rows = one.part === "title" ? 1 : 2;
      el.classList.toggle("title", one.part === "title");
      set_text(label, say(one.name));
      set_value(field, one.text);
    });
    place_tools();
    show_tools(tools, view, into);
    list(part(panel, "checks"), template("template-report-check"), view.checks, (el, check) => {
      el.classList.toggle("there", check.there);
      set_text(part(el, "name"), say(check.name));
      set_text(part(el, "there"), t(check.there ? "report-check-there" : "report-check-not"));
    });
    list(part(hand_in, "stands"), template("template-report-stand"), view.stands, (el, stand) => {
      set_text(part(el, "name"), say(stand.name));
      set_text(part(el, "value"), say(stand.value));
    });
    set_value(by_id<HTMLInputElement>("report-class"), s.look.class);
    set_value(by_id<HTMLInputElement>("report-seat"), s.look.seat);
    const whole = s.look.class.trim() !== "" && s.look.seat.trim() !== "";
    t_into(by_id("report-codes"), whole ? "report-codes-whole" : "report-codes-missing");
    page.show(s, view);
    if (arrived && focus_is_lost(panel)) panel.querySelector("h1")?.focus();
  }

  on_show(show);
}

function index_of(view: ReportView | null, which: ReportPart): number {
  return view?.parts.findIndex((one) => one.part === which) ?? -1;
}

/** A button that puts words in; `about` is their range and rule. */
interface Put {
  label: string;
  put: string;
  about: string | null;
}

function show_tools(tools: HTMLElement, view: ReportView, into: ReportPart): void {
  const start = (said: Said): Put => ({ label: say(said), put: say(said).replace(/ ?…$/, " "), about: null });
  const word = (one: ReportWord): Put => ({
    label: say(one.label),
    put: say(one.put),
    about: one.about && say(one.about),
  });
  const starters = view.parts[index_of(view, into)]?.starters ?? [];
  show_puts(tools, "begin", starters.map(start));
  show_puts(tools, "put", view.bank.map(word));
  const covered = part(tools, "covered");
  toggle(covered, view.covered !== null);
  if (view.covered !== null) set_text(covered, say(view.covered));
}

function show_puts(tools: HTMLElement, name: string, puts: readonly Put[]): void {
  toggle(part(tools, `${name}-line`), puts.length > 0);
  list(part(tools, name), template("template-report-put"), puts, (button, one) => {
    set_text(button, one.label);
    button.dataset.put = one.put;
    set_attr(button, "title", one.about);
    set_attr(button, "aria-description", one.about);
  });
}
