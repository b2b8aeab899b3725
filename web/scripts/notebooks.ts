// Notebooks: which one is open, the list of the others by their codes, save, open, new group, erase.

import type { Action, Look } from "../generated/core";
import { close_menu } from "./bar";
import * as core from "./core";
import { by_id, focus_seen, list, part, set_text, template, toggle } from "./dom";
import { copy_as_text, pick_file, save_file } from "./files";
import { forget, newer } from "./journal";
import { keep_nothing, keep_open, on_stored, on_wrote, saved_to_file, stored_now, write_now } from "./keep";
import { let_go, on_locks, take, take_over, tell_wrote } from "./locks";
import { changed, Halted, halt } from "./long";
import { t, time } from "./say";
import {
  fresh_ui,
  has_state,
  idle,
  on_show,
  open_in_state,
  type State,
  set_stored,
  set_ui,
  set_writable,
  show,
  state,
  type Ui,
  unsafe,
} from "./state";
import {
  type Card,
  erase_records,
  list_cards,
  read_notebook,
  read_open,
  read_tab,
  write_card,
  write_open,
  write_tab,
} from "./storage";

/** Signs of a code: no two look alike, and no vowels, so that no word comes out. */
const SIGNS = "2346789CDFGHJKMNPQRTVWXY";

let cards: Card[] = [];
let asking_erase = false;
/** A closed notebook that a press would open. */
let asking_open: Card | null = null;
let saved_name: string | null = null;
/** One change of notebook at a time. */
let changing: Promise<void> = Promise.resolve();

/** A new code: four signs. The letter of the group comes before them as soon as the group is known. */
function new_code(): string {
  return [...crypto.getRandomValues(new Uint32Array(4))].map((n) => SIGNS[n % SIGNS.length] ?? "X").join("");
}

function new_id(): string {
  return [...crypto.getRandomValues(new Uint8Array(12))].map((n) => n.toString(16).padStart(2, "0")).join("");
}

/** Opens what this tab had open, else what was open last, else an empty notebook. */
export async function open_first(ui: Ui): Promise<void> {
  on_stored((stored, erased) => {
    set_stored(stored);
    if (erased) set_ui({ notice: "erased" });
    if (stored.at !== null) refresh_cards();
  });
  on_wrote(tell_wrote);
  on_locks({
    lost: (id) => {
      if (state().id !== id) return;
      keep_nothing();
      halt(); // what was noted is in the journal: the other tab works it in
      set_writable(false);
    },
    asked: async (id) => {
      if (state().id === id) await write_now();
    },
    wrote: (id) => {
      refresh_cards();
      if (state().id === id && !state().writable) void look_again(id);
    },
  });
  cards = await list_cards().catch(() => []);
  const of_tab = read_tab();
  const id = of_tab ?? (await read_open());
  const card = cards.find((one) => one.id === id);
  const opened = card && (of_tab !== null || !card.closed) && (await open_kept(card.id, ui));
  if (!opened) open_empty(ui);
}

/**
 * Opens a stored notebook with every key of its journal. False when it cannot be read, or was stopped. `opened` is told in
 * the turn that shows it.
 */
async function open_kept(id: string, ui: Ui, steal = false, opened = (): void => {}): Promise<boolean> {
  if (steal) await take_over(id);
  const writable = steal || (await take(id));
  const kept = await read_notebook(id).catch(() => null);
  const lines = kept ? await newer(id, kept.seq) : [];
  const actions = lines.map((line) => line.action);
  const made = kept && (await changed(kept.text, actions, { replay: true }).catch(halted));
  if (!kept || !made) {
    if (writable) let_go();
    return false;
  }
  const { notebook, look } = made;
  core.know_words(made);
  write_tab(id);
  const seq = lines[lines.length - 1]?.seq ?? kept.seq;
  if (writable) keep_open(id, look.code, notebook, seq, kept.seq, true);
  open_in_state(id, notebook, look, writable, { ...ui, panel: writable ? "main" : "other" });
  opened();
  if (writable) await mark_closed(id, false);
  return true;
}

/** Stopped by hand or by itself: nothing was opened. */
function halted(error: unknown): null {
  if (!(error instanceof Halted) && !(error instanceof core.Stopped)) throw error;
  return null;
}

/** Opens a notebook that is not in the store yet. `actions`: how many are in it already (0: nothing worth keeping). */
function open_fresh({ notebook, look }: { notebook: string; look: Look }, ui: Ui, actions: number): void {
  const id = new_id();
  void take(id);
  write_tab(id);
  keep_open(id, look.code, notebook, actions, 0, false);
  open_in_state(id, notebook, look, true, ui);
}

function open_empty(ui: Ui): void {
  const notebook = core.new_notebook(new_code());
  open_fresh({ notebook, look: core.look(notebook) }, ui, 0);
}

/** A tab that only looks shows what the owner has written since. */
async function look_again(id: string): Promise<void> {
  const kept = await read_notebook(id).catch(() => null);
  const made = kept && (await changed(kept.text, []).catch(halted));
  const s = state();
  if (!made || s.id !== id || s.writable) return;
  core.know_words(made);
  open_in_state(id, made.notebook, made.look, false, s.ui);
}

/** "Work here": takes the notebook from the other tab. */
export function work_here(): Promise<void> {
  return one_at_a_time(async () => {
    const { id, ui } = state();
    if (await open_kept(id, { ...ui, menu: null }, true)) return;
    await take_over(id);
    const { notebook, look } = state();
    open_in_state(id, notebook, look, true, { ...ui, panel: "main" });
  });
}

/** Opens a notebook made elsewhere (a file, an example) beside the one in hand, which stays in the list. */
export function open_made(notebook: string, actions: readonly Action[] = []): Promise<boolean> {
  return new Promise((done, failed) => {
    one_at_a_time(async () => {
      const made = await changed(notebook, actions, { first: actions.length > 0 ? "table" : "opening" });
      await leave(false);
      core.know_words(made);
      open_fresh(made, plain_ui(), 1);
      // It is on the screen: who waits to move the focus must not do so later, while something is being typed.
      done(true);
      await write_now();
    }).then(() => done(false), failed);
  });
}

/** A new notebook with one of our invented casts. */
export function open_example(name: core.ExampleName): Promise<boolean> {
  return open_table(core.example(name), "take_example");
}

/** A new notebook with a table; for a table opened while the notebook in hand may only be looked at. */
export function open_table(text: string, how: "paste" | "take_file" | "take_example"): Promise<boolean> {
  return open_made(core.new_notebook(new_code()), [{ do: how, text }]);
}

function new_group(): Promise<void> {
  return one_at_a_time(async () => {
    await leave(true);
    await write_open(null);
    open_empty(plain_ui());
    focus_bar();
  });
}

function open_card(card: Card): Promise<void> {
  return one_at_a_time(async () => {
    await leave(false);
    if (await open_kept(card.id, plain_ui(), false, focus_bar)) return write_open(card.id);
    open_empty(plain_ui());
    focus_bar();
  });
}

function erase(): Promise<void> {
  return one_at_a_time(async () => {
    const { id } = state();
    await write_now();
    keep_nothing();
    await erase_records(id);
    forget(id);
    let_go();
    await write_open(null);
    open_empty(plain_ui());
    focus_bar();
  });
}

/** Writes and lets go of the notebook in hand. */
async function leave(closed: boolean): Promise<void> {
  const { id, writable } = state();
  if (!writable) return;
  await write_now();
  keep_nothing();
  if (closed) await mark_closed(id, true);
  let_go();
}

async function mark_closed(id: string, closed: boolean): Promise<void> {
  const card = (await list_cards().catch(() => [])).find((one) => one.id === id);
  if (card && card.closed !== closed) await write_card({ ...card, closed });
}

function plain_ui(): Ui {
  const { ui } = state();
  saved_name = null;
  // What was said of a stop stays until it is closed.
  return { ...fresh_ui(ui), stopped: ui.stopped };
}

function one_at_a_time(what: () => Promise<void>): Promise<void> {
  changing = changing
    .then(idle)
    .then(what)
    .catch((error) => void halted(error));
  return changing.then(refresh_cards);
}

async function refresh_cards(): Promise<void> {
  cards = await list_cards().catch(() => cards);
  if (has_state() && state().ui.menu === "notebooks") show();
}

/** Saves the notebook in hand as a file, with everything that is still being worked in. */
export async function save_notebook(): Promise<void> {
  await idle();
  const { notebook, look } = state();
  saved_name = `${look.file_name}.json`;
  save_file(saved_name, notebook);
  saved_to_file();
}

/** Wires the menu. */
export function mount_notebooks(): void {
  by_id("notebooks-save").addEventListener("click", () => void save_notebook());
  by_id("notebooks-copy").addEventListener("click", () => copy_as_text(state().notebook));
  by_id("notebooks-open").addEventListener("click", () => {
    close_menu();
    pick_file();
  });
  by_id("notebooks-new").addEventListener("click", () => void new_group());
  by_id("notebooks-erase").addEventListener("click", () => ask_erase(true));
  by_id("notebooks-erase-no").addEventListener("click", () => {
    ask_erase(false);
    by_id("notebooks-erase").focus();
  });
  by_id("notebooks-erase-yes").addEventListener("click", () => {
    asking_erase = false;
    void erase();
  });
  by_id("notebooks-open-no").addEventListener("click", () => {
    asking_open = null;
    show();
    by_id("menu-notebooks").focus();
  });
  by_id("notebooks-open-yes").addEventListener("click", () => {
    const card = asking_open;
    asking_open = null;
    if (card) void open_card(card);
  });
  addEventListener("beforeunload", (event) => {
    if (unsafe() || (stored_now().unsaved && stored_now().where === "nowhere")) event.preventDefault();
    void write_now();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void write_now();
  });
  on_show(show_notebooks);
}

/** In the turn that shows another notebook its name in the bar has the focus, unless somebody had gone on: the store is slow. */
function focus_bar(): void {
  const at = document.activeElement;
  if (at === null || at === document.body || !at.checkVisibility()) by_id("bar-water").focus();
}

function ask_erase(on: boolean): void {
  asking_erase = on;
  show();
  if (on) focus_seen(by_id("notebooks-erase-no"));
}

let was_open = false;

function show_notebooks(s: State): void {
  const open = s.ui.menu === "notebooks";
  if (open && !was_open) void refresh_cards();
  if (!open) {
    asking_erase = false;
    asking_open = null;
  }
  was_open = open;
  if (!open) return;
  const { code, empty } = s.look;
  const here: Card[] = empty ? [] : [{ id: s.id, code, closed: false, changed: 0 }];
  const all = [...here, ...cards.filter((card) => card.id !== s.id)];
  const codes = all.map((card) => card.code);
  toggle(by_id("notebooks-none"), all.length === 0);
  list(by_id("notebooks-list"), template("template-book"), all, (el, card) => {
    const mine = card.id === s.id;
    const twins = codes.filter((one) => one === card.code).length > 1;
    el.classList.toggle("on", mine);
    set_text(part(el, "code"), card.code);
    set_text(
      part(el, "when"),
      twins && !mine ? t("page-notebooks-changed", { time: time(new Date(card.changed)) }) : "",
    );
    toggle(part(el, "here"), mine);
    const button = part<HTMLButtonElement>(el, "open");
    toggle(button, !mine);
    button.setAttribute("aria-label", t("page-notebooks-open-label", { code: card.code }));
    button.onclick = () => {
      if (!card.closed) {
        void open_card(card);
        return;
      }
      asking_open = card;
      show();
      focus_seen(by_id("notebooks-open-no"));
    };
  });
  toggle(by_id("notebooks-erase-ask"), asking_erase);
  toggle(by_id("notebooks-open-ask"), asking_open !== null);
  toggle(by_id("notebooks-ways"), !asking_erase && asking_open === null);
  if (asking_open) set_text(by_id("notebooks-open-title"), t("page-notebooks-open-title", { code: asking_open.code }));
  set_text(by_id("notebooks-erase-title"), t("page-notebooks-erase-title", { code }));
  set_text(by_id("notebooks-erase"), t("page-notebooks-erase", { code }));
  set_text(by_id("notebooks-new-about"), t("page-notebooks-new-about", { code }));
  toggle(by_id("notebooks-save-row"), !empty);
  toggle(by_id("notebooks-new-row"), !empty);
  toggle(by_id("notebooks-erase-row"), !empty && s.writable);
  toggle(by_id("notebooks-saved"), saved_name !== null && !empty);
  if (saved_name) set_text(by_id("notebooks-saved-said"), t("page-notebooks-saved", { name: saved_name }));
}
