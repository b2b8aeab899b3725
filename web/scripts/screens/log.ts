// Log: readings at their depths. The picture and the table share one axis; the panel says what was understood, what is
// doubted, and what comes next.

import type { Action, DoubtView, LogView, Opened, Said } from "../../generated/core";
import { go } from "../bar";
import type { ExampleName } from "../core";
import { by_id, focus_seen, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { on_arrived, pick_file, take_text } from "../files";
import { focus_is_lost } from "../focus";
import { open_example, open_made } from "../notebooks";
import { mount_picture, type Picture } from "../picture";
import { say, say_into, speak, t, t_into } from "../say";
import { dispatch, list_from, on_show, type State, set_ui, state } from "../state";
import { change_view, is_stacked } from "../view_menu";
import { show_ways } from "../ways";
import { mount_log_by_hand, open_by_hand, show_log_by_hand } from "./log_by_hand";
import { mount_log_doors, show_log_doors } from "./log_doors";
import { mount_log_guess, show_log_guess } from "./log_guess";
import { mount_log_other, show_log_other } from "./log_other";
import {
  focus_cell,
  focus_entry,
  focus_half_typed,
  is_typing,
  leave_table,
  mount_log_table,
  on_typing_end,
  show_log_table,
} from "./log_table";

/** What stands behind the doors of the panel. */
const DOORS = ["corrections", "companions", "guess", "other", "by_hand"] as const;

let picture: Picture | null = null;
/** What the panel says. It waits while a cell is being typed into, so that half a number raises no doubt. */
let panel: LogView | null = null;
let panel_empty = true;
let panel_of = "";
let first = true;
let here = false;

/** Wires the screen. */
export function mount_log(): void {
  const figure = by_id("log-picture");
  picture = mount_picture(figure, "log");
  mount_log_table(figure, () => picture?.placement() ?? null);
  on_typing_end(() => show_log(state()));
  mount_log_doors(() => show_log(state()));
  mount_log_other();
  mount_log_guess(figure, () => picture?.placement() ?? null);
  mount_log_by_hand(figure, () => picture?.placement() ?? null);
  on_arrived(after_paste);
  mount_ways_in();
  mount_file_states();
  by_id("log-skip").addEventListener("click", (event) => {
    event.preventDefault();
    leave_table();
  });
  by_id("log-reopen").addEventListener("click", () => {
    dispatch({ do: "open_table" }, () => by_id("asis-roles").querySelector("select")?.focus());
  });
  by_id("log-profile").addEventListener("click", () => {
    const { not_yet, by_hand } = state().look.log;
    if (by_hand?.waits) open_by_hand();
    else if (not_yet === null) go("profile");
  });
  by_id("log-add").addEventListener("click", () => {
    dispatch({ do: "add_mark" }, () => focus_cell(state().look.log.rows.length - 1, "down"));
  });
  by_id("log-undo").addEventListener("click", () => {
    const undo = state().look.log.undo;
    if (!undo) return;
    dispatch(undo.action, () => {
      keep_focus();
      if (!state().look.empty) speak(say(state().look.log.title));
    });
  });
  by_id<HTMLSelectElement>("log-part").addEventListener("change", (event) => {
    const { value } = event.target as HTMLSelectElement;
    void list_from(Number(value)).then(() => speak(say_part(state().look.log)));
  });
  field("log-water", (text) => ({ do: "set_water", text }));
  field("log-group-first", (text) => ({ do: "set_group", text }));
  field("log-group", (text) => ({ do: "set_group", text }));
  field("log-class", (text) => ({ do: "set_class", text }));
  field("log-seat", (text) => ({ do: "set_seat", text }));
  field("log-bed", (text) => ({ do: "set_bed", text }));
  on_show(show_log);
}

/** A short text of the notebook, taken over with every key. */
export function field(id: string, action: (text: string) => Action): void {
  const input = by_id<HTMLInputElement>(id);
  input.addEventListener("input", () => dispatch(action(input.value)));
}

function mount_ways_in(): void {
  by_id("log-type").addEventListener("click", () => focus_cell(0, "down"));
  by_id("log-paste").addEventListener("click", open_paste);
  by_id("no-paste").addEventListener("click", open_paste);
  by_id("log-open").addEventListener("click", pick_file);
  by_id("no-open").addEventListener("click", pick_file);
  for (const button of document.querySelectorAll<HTMLElement>("[data-example]")) {
    const name = button.dataset.example as ExampleName;
    button.addEventListener("click", () => void open_example(name).then(after_open));
  }
  const paste_field = by_id<HTMLTextAreaElement>("paste-field");
  by_id("paste-use").addEventListener("click", () => {
    if (!paste_field.value.trim()) return paste_field.focus();
    void take_text(paste_field.value).then((went_in) => {
      if (went_in) paste_field.value = "";
    });
  });
  by_id("paste-close").addEventListener("click", close_paste);
  paste_field.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && state().ui.menu === null) close_paste();
  });
}

function open_paste(): void {
  set_ui({ pasting: true, file: null });
  by_id("paste-field").focus();
}

function close_paste(): void {
  set_ui({ pasting: false });
  keep_focus();
}

function mount_file_states(): void {
  const close = () => {
    set_ui({ file: null });
    keep_focus();
  };
  by_id("newer-leave").addEventListener("click", close);
  by_id("no-close").addEventListener("click", close);
  by_id("lesson-leave").addEventListener("click", close);
  by_id("lesson-take").addEventListener("click", () => {
    const { file } = state().ui;
    if (file?.kind !== "lesson") return;
    const { lesson, language } = file.lesson;
    dispatch({ do: "take_lesson", text: lesson });
    set_ui({ file: null });
    if (language === "en" || language === "es") change_view({ lang: language });
    keep_focus();
  });
  by_id("newer-take").addEventListener("click", () => {
    const file = state().ui.file;
    if (file?.kind === "newer" && file.readings !== null) void open_made(file.readings).then(after_open);
  });
}

function after_open(went_in: boolean): void {
  if (went_in) after_paste();
}

/** A table has come in: the focus goes to the first thing to settle, else on to the profile. */
function after_paste(): void {
  const { log } = state().look;
  const places = log.pending
    ? ["#pending-ways button", "#pending-use"]
    : ["#log-doubts button", "#log-leg-ways button", "#log-profile"];
  for (const place of places) {
    const el = document.querySelector<HTMLElement>(place);
    if (!el || el.offsetParent === null) continue;
    focus_seen(el);
    break;
  }
  speak(say(log.pending?.understood ?? log.understood ?? log.title));
}

/** After a press that took its own button away the focus goes to the panel's next move. */
function keep_focus(): void {
  const at = document.activeElement;
  const panel = by_id("log-panel");
  if (at instanceof HTMLElement && at !== document.body && at !== panel && at.offsetParent !== null) return;
  const next = [...panel.querySelectorAll<HTMLElement>(".go")].find((el) => el.offsetParent !== null);
  focus_seen(next ?? panel);
}

function show_log(s: Readonly<State>): void {
  const arrived = s.look.place.screen === "log" && !here && !first;
  here = s.look.place.screen === "log";
  if (!here) return;
  const { look, ui } = s;
  if (!is_typing() || panel_of !== s.id) {
    panel = look.log;
    panel_empty = look.empty;
    panel_of = s.id;
  }
  const pending = look.log.pending;
  const shows = which(s);
  for (const one of ["empty", "pasting", "newer", "lesson", "no", "pending", ...DOORS, "main"])
    toggle(by_id(`log-${one}`), one === shows);
  const as_table = shows === "pending" && pending !== null && pending.columns.length > 0;
  toggle(by_id("log-sheet"), !as_table);
  toggle(by_id("log-asis"), as_table);
  if (!as_table) {
    picture?.show(s);
    show_log_table(s);
  }
  if (shows === "empty") show_empty(s);
  if (shows === "newer" && ui.file?.kind === "newer") {
    t_into(by_id("newer-lead"), "page-newer-lead", { name: ui.file.name, version: ui.file.version });
    toggle(by_id("newer-take"), ui.file.readings !== null);
  }
  if (shows === "lesson" && ui.file?.kind === "lesson") show_lesson(ui.file.name, ui.file.lesson);
  if (shows === "no" && ui.file) show_no(ui.file);
  if (shows === "main" && panel) show_main(s, panel);
  show_log_doors(s);
  toggle(by_id("log-lesson-on"), look.log.lesson !== null);
  if (look.log.lesson !== null) say_into(by_id("log-lesson-on"), look.log.lesson);
  show_log_guess(s, shows === "guess");
  show_log_by_hand(s, shows === "by_hand");
  if (shows === "other") show_log_other(s);
  if (arrived && focus_is_lost(by_id("log-panel"))) keep_focus();
  if (first) {
    first = false;
    if (look.empty && s.writable && !is_stacked()) focus_cell(0, "down");
    else if (s.writable) focus_half_typed();
  }
}

function show_lesson(name: string, lesson: Extract<Opened, { kind: "lesson" }>): void {
  const { title, sum, said } = lesson;
  t_into(by_id("lesson-lead"), title === "" ? "page-lesson-lead-untitled" : "page-lesson-lead", { name, title });
  say_into(by_id("lesson-sum"), sum);
  list(by_id("lesson-said"), template("template-line"), said, (el, one) => say_into(el, one));
}

function which(
  s: Readonly<State>,
):
  | "empty"
  | "pasting"
  | "newer"
  | "lesson"
  | "no"
  | "pending"
  | "corrections"
  | "companions"
  | "guess"
  | "other"
  | "by_hand"
  | "main" {
  if (s.ui.pasting) return "pasting";
  if (s.ui.file) return s.ui.file.kind === "large" ? "no" : s.ui.file.kind;
  if (s.look.log.pending) return "pending";
  const { guess, by_hand } = s.look.log;
  const shut = {
    guess: guess === null,
    by_hand: by_hand === null,
    corrections: false,
    companions: false,
    other: false,
  };
  const door = s.ui.log_door === null || shut[s.ui.log_door] ? null : s.ui.log_door;
  return door ?? (panel_empty ? "empty" : "main");
}

/** The group may be named before anything else: its notebook's code begins with its letter. */
function show_empty({ look }: Readonly<State>): void {
  toggle(by_id("log-guess-line"), look.log.guess !== null);
  set_value(by_id<HTMLInputElement>("log-group-first"), look.group);
  set_value(by_id<HTMLInputElement>("log-class"), look.class);
  set_value(by_id<HTMLInputElement>("log-seat"), look.seat);
  const about = by_id("log-group-about");
  if (look.group) t_into(about, "page-log-group-code", { code: look.code });
  else t_into(about, "page-log-group-open");
}

function show_no(file: NonNullable<State["ui"]["file"]>): void {
  set_text(by_id("no-name"), file.name);
  const lines = file.kind === "no" ? file.said : [];
  toggle(by_id("no-large"), file.kind === "large");
  list(by_id("no-said"), template("template-line"), lines, (el, said) => say_into(el, said));
}

function show_main(s: Readonly<State>, log: LogView): void {
  say_into(by_id("log-title"), log.title);
  show_line("log-example-note", log.example);
  toggle(by_id("log-understood"), log.understood !== null || log.can_reopen);
  if (log.understood) say_into(by_id("log-understood-said"), log.understood);
  else set_text(by_id("log-understood-said"), "");
  toggle(by_id("log-reopen"), log.can_reopen);
  toggle(by_id("log-not-yet"), log.not_yet !== null);
  if (log.not_yet) say_into(by_id("log-not-yet"), log.not_yet);

  const leg = log.leg_choice;
  toggle(by_id("log-leg"), leg !== null);
  if (leg) {
    say_into(by_id("log-leg-title"), leg.title);
    say_into(by_id("log-leg-text"), leg.text);
  }
  show_ways(by_id("log-leg-ways"), leg?.ways ?? [], { small: true, press });

  list(by_id("log-doubts"), template("template-doubt"), log.doubts, show_doubt);
  show_line("log-more-doubts", log.more_doubts);
  list(by_id("log-settled"), template("template-settled"), log.settled, (el, one) => {
    const text = { place: say(one.place), what: say(one.text) };
    set_text(part(el, "text"), t("page-log-settled", text));
    show_links(part(el, "ways"), one);
  });
  list(by_id("log-corrected"), template("template-line"), s.look.log.corrections.in_force, (el, said) =>
    say_into(el, said),
  );
  show_line("log-more-settled", log.more_settled);
  show_line("log-more-rows", log.more_rows);
  show_parts(s.look.log);
  list(by_id("log-notices"), template("template-line"), log.notices, (el, said) => say_into(el, said));

  set_value(by_id<HTMLInputElement>("log-water"), s.look.water);
  set_value(by_id<HTMLInputElement>("log-group"), s.look.group);
  set_value(by_id<HTMLInputElement>("log-bed"), s.look.log.bed_text);
  const profile = by_id("log-profile");
  t_into(profile, log.by_hand?.waits ? "page-log-to-by-hand" : "page-log-profile");
  set_attr(profile, "aria-disabled", log.not_yet ? "true" : null);
  set_attr(profile, "aria-describedby", log.not_yet ? "log-not-yet" : null);
  toggle(by_id("log-undo"), log.undo !== null);
  if (log.undo) set_text(by_id("log-undo"), say(log.undo.label));
  toggle(by_id("log-add"), log.more_rows === null);
  set_text(by_id("log-foot"), t(log.doubts.length > 0 ? "page-log-foot-doubts" : "page-log-foot"));
}

/** "2001 to 4000": the rows in the table, of a very long cast. */
function say_part({ first_row, rows }: LogView, from = first_row, to = from + rows.length): string {
  return t("page-log-part-rows", { from: from + 1, to });
}

/** All rows of a very long cast can be listed, a part at a time. */
function show_parts(log: LogView): void {
  toggle(by_id("log-parts"), log.more_rows !== null);
  const size = Math.max(1, log.rows.length);
  const starts = log.more_rows ? Array.from({ length: Math.ceil(log.row_count / size) }, (_, part) => part * size) : [];
  const select = by_id<HTMLSelectElement>("log-part");
  list(select, template("template-option"), starts, (el, from) => {
    (el as HTMLOptionElement).value = String(from);
    set_text(el, say_part(log, from, Math.min(from + size, log.row_count)));
  });
  // The last part is filled up from the one before it.
  set_value(select, String(Math.ceil(log.first_row / size) * size));
}

function show_line(id: string, said: Said | null): void {
  toggle(by_id(id), said !== null);
  if (said) say_into(by_id(id), said);
}

function show_doubt(el: HTMLElement, doubt: DoubtView, index: number): void {
  el.id = `log-doubt-${index}`;
  say_into(part(el, "where"), doubt.place);
  say_into(part(el, "text"), doubt.text);
  show_ways(part(el, "ways"), doubt.ways, { small: true, press });
  const type = part<HTMLButtonElement>(el, "type");
  toggle(type, doubt.type_entry !== null);
  type.onclick = () => {
    if (doubt.type_entry !== null) focus_entry(doubt.type_entry, doubt.type_depth);
  };
}

/** Settling a doubt: the next one moves into its place and has the focus; after the last, the next move has it. */
function press(action: Action): boolean {
  dispatch(action, () => {
    keep_focus();
    speak(say(state().look.log.title));
  });
  return true;
}

function show_links(el: HTMLElement, one: DoubtView): void {
  list(el, template("template-link"), one.ways, (button, way) => {
    set_text(button, say(way.label));
    button.onclick = () => press(way.action);
  });
}
