// One state, one writer, one whole redraw. Handlers only call `dispatch` (the notebook changes) or `set_ui` (only what is
// on the page changes); every screen registers one `show` that may run twice.

import type { Action, Look, Opened, Otherwise, Said } from "../generated/core";
import { begin_busy } from "./busy";
import * as core from "./core";
import { hold_field } from "./dom";
import { forget_stopped, keep_action, keep_text, type Noted, note_action, type Stored, stored_now } from "./keep";
import { beside, brings_table, Halted, halt, is_long } from "./long";
import type { Lang } from "./say";

/** The four themes. */
export type Theme = "day" | "night" | "sunlight" | "projector";

/** A file or text that did not become a notebook or a table at once. */
export type FileTrouble =
  | { kind: "newer"; name: string; version: number; readings: string | null }
  | { kind: "lesson"; name: string; lesson: Extract<Opened, { kind: "lesson" }> }
  | { kind: "no"; name: string; said: Said[] }
  | { kind: "large"; name: string };

/** What is on the page besides the notebook; none of it is saved in the notebook. */
export interface Ui {
  theme: Theme;
  lang: Lang;
  /** The other language stands beneath the words of the questions. */
  both: boolean;
  /** Per cent: 100 is the size of the design. */
  text_size: number;
  /** Index into `Look.readings`. */
  cursor: number | null;
  /** Flat index over the rows of `Look.profile.rules`. */
  rule: number | null;
  menu: "notebooks" | "view" | "help" | null;
  /** Which panel Profile shows ("other": the panel that asks what to do about another tab). */
  panel: "main" | "table" | "rules" | "sure" | "otherwise" | "mixing" | "early" | "other";
  /** How the cast is read otherwise, while that panel is open. */
  otherwise: Otherwise;
  /** The row Log's table begins with, in a very long cast. */
  first_row: number;
  /** Log shows the field a table is pasted into. */
  pasting: boolean;
  /** What Log's panel shows in place of the doubts. */
  log_door: "corrections" | "companions" | "guess" | "other" | "by_hand" | null;
  /** Log shows why a file was not opened. */
  file: FileTrouble | null;
  /** What happened when the calculation stopped, until the notice is closed. */
  stopped: string | null;
  /** This page is new on an old browser store, or the other way round: what the notice about it says. */
  notice: "erased" | null;
}

/** The state of the page. */
export interface State {
  /** Name of the notebook in this browser's store; random, never shown. */
  readonly id: string;
  /** The notebook as text; only the calculation reads inside it. */
  readonly notebook: string;
  readonly look: Look;
  readonly ui: Readonly<Ui>;
  /** Where the work is kept. */
  readonly stored: Readonly<Stored>;
  /** False while another tab works on this notebook: here one can only look. */
  readonly writable: boolean;
}

/** How the page is seen: kept from one notebook to the next. */
export type View = Pick<Ui, "theme" | "lang" | "both" | "text_size">;

/** The cast as it was read. */
const AS_READ: Otherwise = {
  marks: "as_read",
  ways: "both",
  wait: "as_read",
  digits: "as_read",
  cable: "as_read",
};

/** What is on the page when a notebook has just been opened. */
export function fresh_ui(view: View): Ui {
  const { theme, lang, both, text_size } = view;
  return {
    theme,
    lang,
    both,
    text_size,
    cursor: null,
    rule: null,
    menu: null,
    panel: "main",
    otherwise: AS_READ,
    first_row: 0,
    pasting: false,
    log_door: null,
    file: null,
    stopped: null,
    notice: null,
  };
}

let current: State | null = null;
const shows: ((s: State) => void)[] = [];
let showing = false;
let again = false;

/** The state as it is. */
export function state(): Readonly<State> {
  if (!current) throw new Error("no state yet");
  return current;
}

/** Whether a notebook has been opened yet. */
export function has_state(): boolean {
  return current !== null;
}

/** Registers a screen's `show`. It runs after every change and may run twice. */
export function on_show(show: (s: State) => void): void {
  shows.push(show);
}

/**
 * One thing a person did to the notebook: calculates, keeps, shows. Then `after` is called with whether it went in: at
 * once, or, when the notebook is large, as soon as that has been done beside the page, in the order of pressing.
 */
export function dispatch(action: Action, after: (went_in: boolean) => void = () => {}): void {
  const before = state();
  const going = action.do === "go";
  if (!before.writable && !going) {
    set_ui({ panel: "other" });
    after(false);
    return;
  }
  if (working || is_long(before.notebook, [action])) {
    const noted = before.writable ? note_action(before.id, action) : null;
    hold_field(true);
    working_on([{ action, noted, after }]);
    return;
  }
  const made = calculated(before.notebook, action);
  if (made) {
    take_in(made);
    // A stop on the way has been said in the meantime: that notice stays.
    if (before.writable) keep_action(before.id, made.look.code, action, made.notebook);
    show();
  }
  after(made !== null);
}

/** [`dispatch`] as a promise. */
export function dispatched(action: Action): Promise<boolean> {
  return new Promise((done) => dispatch(action, done));
}

/** The state with a changed notebook. */
function take_in({ notebook, look }: { notebook: string; look: Look }): void {
  const before = state();
  const moved = before.look.place.screen !== look.place.screen;
  const ui: Ui = { ...before.ui, cursor: kept_cursor(before, look), rule: moved ? null : before.ui.rule };
  if (moved)
    Object.assign(ui, { panel: before.writable ? "main" : before.ui.panel, menu: null, pasting: false, file: null });
  current = { ...before, notebook, look, ui };
}

// Actions on a large notebook: done beside the page, all that wait at once, in their order.

interface Waiting {
  action: Action;
  /** How the journal has it; `null` when this tab only looks. */
  noted: Noted | null;
  after: (went_in: boolean) => void;
}

let waiting: Waiting[] = [];
let working = false;
let idle_listeners: (() => void)[] = [];

/** Resolves when every action has gone in. */
export function idle(): Promise<void> {
  return working ? new Promise((done) => idle_listeners.push(done)) : Promise.resolve();
}

/** Lists a very long cast from another row on. */
export async function list_from(first_row: number): Promise<void> {
  set_ui({ first_row });
  working_on([]);
  await idle();
}

/** Something is being worked in that the journal has not: closing the page now would lose it. */
export function unsafe(): boolean {
  return working && waiting.concat(in_hand).some((one) => one.noted?.safe === false);
}

let in_hand: Waiting[] = [];
/** Nothing was done, but the notebook is to be looked at anew. */
let look_again = false;

function working_on(more: readonly Waiting[]): void {
  waiting.push(...more);
  look_again ||= more.length === 0;
  void work();
}

async function work(): Promise<void> {
  if (working) return;
  working = true;
  try {
    while (waiting.length > 0 || look_again) {
      look_again = false;
      in_hand = waiting;
      waiting = [];
      await work_in(in_hand);
    }
  } finally {
    working = false;
    in_hand = [];
    hold_field(false);
    const told = idle_listeners;
    idle_listeners = [];
    for (const one of told) one();
  }
}

async function work_in(batch: readonly Waiting[]): Promise<void> {
  const before = state();
  const actions = batch.map((one) => one.action);
  const pasted = actions.some(brings_table);
  const first = pasted ? "table" : actions.length > 0 ? "change" : "opening";
  if (pasted) set_ui({ first_row: 0 });
  const busy = begin_busy([first, "calculating"], halt);
  let went_in = false;
  try {
    const { first_row } = state().ui;
    const made = await beside(
      { do: "change", notebook: before.notebook, actions, replay: false, first_row, ranges: core.known_ranges() },
      busy,
      first,
    );
    core.know_words(made);
    take_in(made);
    const noted = batch[batch.length - 1]?.noted;
    const safe = batch.every((one) => one.noted?.safe !== false);
    if (noted) keep_text(before.id, made.look.code, made.notebook, { seq: noted.seq, safe });
    went_in = true;
  } catch (error) {
    // Stopped, by hand or by itself: nothing of it has happened, and what waited for it does not happen either.
    batch = [...batch, ...waiting];
    waiting = [];
    forget_stopped(before.id);
    if (!(error instanceof Halted) && !(error instanceof core.Stopped)) throw error;
  } finally {
    if (waiting.length === 0) hold_field(false);
    busy.end();
    show();
    for (const one of batch) one.after(went_in);
  }
}

/** The notebook after an action and how it looks. When the calculation stops, a fresh instance is asked once more. */
function calculated(before: string, action: Action): { notebook: string; look: Look } | null {
  for (let tries = 0; tries < 2; tries += 1) {
    try {
      return core.step(before, action);
    } catch (error) {
      if (!(error instanceof core.Stopped)) throw error; // a stop is said by trouble.ts; the notebook stays as it was
    }
  }
  return null;
}

function kept_cursor(before: State, look: Look): number | null {
  const at = before.ui.cursor;
  return at !== null && at < look.readings.length ? at : null;
}

/** The trials have come to something: everything is looked at anew with it. */
export function set_ranges(ranges: string | null): void {
  core.know_ranges(ranges);
  const before = state();
  if (working || is_long(before.notebook)) {
    working_on([]);
    return;
  }
  try {
    current = { ...before, look: core.look(before.notebook) };
  } catch (error) {
    if (!(error instanceof core.Stopped)) throw error; // said by trouble.ts; what was shown stays
  }
  show();
}

/** Changes what is on the page only. */
export function set_ui(change: Partial<Ui>): void {
  const before = state();
  current = { ...before, ui: { ...before.ui, ...change } };
  show();
}

/** Opens a notebook in place of the one that was open (or the first one). */
export function open_in_state(id: string, notebook: string, look: Look, writable: boolean, ui: Ui): void {
  current = { id, notebook, look, ui, stored: stored_now(), writable };
  show();
}

/** Another tab took over, or gave back. */
export function set_writable(writable: boolean): void {
  if (current) current = { ...current, writable, ui: { ...current.ui, panel: writable ? "main" : "other" } };
  show();
}

/** Where the work is kept has changed. */
export function set_stored(stored: Stored): void {
  if (!current) return;
  current = { ...current, stored };
  show();
}

/** Shows everything anew (the language, the size of the window or the fonts changed). */
export function show(): void {
  if (showing) {
    again = true;
    return;
  }
  showing = true;
  try {
    do {
      again = false;
      if (current) for (const one of shows) one(current);
    } while (again);
  } finally {
    showing = false;
  }
}
