// Notebooks: which one is open, the list of the others by their codes, save, open, new group, erase.

import { close_menu } from "./bar";
import * as core from "./core";
import { by_id, focus_seen, list, part, set_text, template, toggle } from "./dom";
import { copy_as_text, pick_file, save_file } from "./files";
import { forget, newer } from "./journal";
import { keep_nothing, keep_open, on_stored, on_wrote, saved_to_file, stored_now, write_now } from "./keep";
import { let_go, on_locks, take, take_over, tell_wrote } from "./locks";
import { t, time } from "./say";
import {
  has_state,
  on_show,
  open_in_state,
  type State,
  set_stored,
  set_ui,
  set_writable,
  show,
  state,
  type Ui,
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

/** A new code: a letter for the group, and four signs. */
function new_code(): string {
  const signs = [...crypto.getRandomValues(new Uint32Array(5))].map((n) => SIGNS[n % SIGNS.length] ?? "X");
  // The first sign is a letter: the digits stand first in SIGNS.
  const letters = SIGNS.slice(7);
  const first = crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
  return `${letters[first % letters.length]}-${signs.slice(1).join("")}`;
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
  if (!opened) open_fresh(new_id(), core.new_notebook(new_code()), ui, 0);
}

/** Opens a stored notebook with every key of its journal. False when it cannot be read. */
async function open_kept(id: string, ui: Ui, steal = false): Promise<boolean> {
  if (steal) await take_over(id);
  const writable = steal || (await take(id));
  const kept = await read_notebook(id).catch(() => null);
  if (!kept) {
    if (writable) let_go();
    return false;
  }
  let { text, seq } = kept;
  for (const line of await newer(id, seq)) {
    try {
      text = core.act(text, line.action);
    } catch {
      // said by trouble.ts if the calculation stopped; the other lines still count
    }
    seq = line.seq;
  }
  write_tab(id);
  const code = core.look(text).code;
  if (writable) keep_open(id, code, text, seq, kept.seq, true);
  open_in_state(id, text, writable, { ...ui, panel: writable ? "main" : "other" });
  if (writable) await mark_closed(id, false);
  return true;
}

/** Opens a notebook that is not in the store yet. `actions`: how many are in it already (0: nothing worth keeping). */
function open_fresh(id: string, notebook: string, ui: Ui, actions: number): void {
  void take(id);
  write_tab(id);
  keep_open(id, core.look(notebook).code, notebook, actions, 0, false);
  open_in_state(id, notebook, true, ui);
}

/** A tab that only looks shows what the owner has written since. */
async function look_again(id: string): Promise<void> {
  const kept = await read_notebook(id).catch(() => null);
  const s = state();
  if (kept && s.id === id && !s.writable) open_in_state(id, kept.text, false, s.ui);
}

/** "Work here": takes the notebook from the other tab. */
export function work_here(): Promise<void> {
  return one_at_a_time(async () => {
    const { id, ui } = state();
    if (await open_kept(id, { ...ui, menu: null }, true)) return;
    await take_over(id);
    open_in_state(id, state().notebook, true, { ...ui, panel: "main" });
  });
}

/** Opens a notebook made elsewhere (a file, an example) beside the one in hand, which stays in the list. */
export function open_made(notebook: string): Promise<void> {
  return one_at_a_time(async () => {
    await leave(false);
    open_fresh(new_id(), notebook, plain_ui(), 1);
    await write_now();
  });
}

/** A new notebook with one of our invented casts. */
export function open_example(name: core.ExampleName): Promise<void> {
  const empty = core.new_notebook(new_code());
  return open_made(core.act(empty, { do: "paste", text: core.example(name) }));
}

/** A new notebook with a table; for a table opened while the notebook in hand may only be looked at. */
export function open_table(text: string): Promise<void> {
  return open_made(core.act(core.new_notebook(new_code()), { do: "paste", text }));
}

function new_group(): Promise<void> {
  return one_at_a_time(async () => {
    await leave(true);
    await write_open(null);
    open_fresh(new_id(), core.new_notebook(new_code()), plain_ui(), 0);
  });
}

function open_card(card: Card): Promise<void> {
  return one_at_a_time(async () => {
    await leave(false);
    if (await open_kept(card.id, plain_ui())) await write_open(card.id);
    else open_fresh(new_id(), core.new_notebook(new_code()), plain_ui(), 0);
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
    open_fresh(new_id(), core.new_notebook(new_code()), plain_ui(), 0);
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
  const { theme, lang, text_size, stopped } = state().ui;
  saved_name = null;
  return {
    theme,
    lang,
    text_size,
    stopped,
    cursor: null,
    rule: null,
    menu: null,
    panel: "main",
    pasting: false,
    file: null,
    busy: null,
    notice: null,
  };
}

function one_at_a_time(what: () => Promise<void>): Promise<void> {
  changing = changing.then(what).catch((error) => {
    if (!(error instanceof core.Stopped)) throw error;
  });
  return changing.then(refresh_cards);
}

async function refresh_cards(): Promise<void> {
  cards = await list_cards().catch(() => cards);
  if (has_state() && state().ui.menu === "notebooks") show();
}

/** Saves the notebook in hand as a file. */
export function save_notebook(): void {
  const { notebook, look } = state();
  saved_name = `${look.file_name}.json`;
  save_file(saved_name, notebook);
  saved_to_file();
}

/** Wires the menu. */
export function mount_notebooks(): void {
  by_id("notebooks-save").addEventListener("click", save_notebook);
  by_id("notebooks-copy").addEventListener("click", () => copy_as_text(state().notebook));
  by_id("notebooks-open").addEventListener("click", () => {
    close_menu();
    pick_file();
  });
  by_id("notebooks-new").addEventListener("click", () => void new_group().then(() => by_id("bar-water").focus()));
  by_id("notebooks-erase").addEventListener("click", () => ask_erase(true));
  by_id("notebooks-erase-no").addEventListener("click", () => {
    ask_erase(false);
    by_id("notebooks-erase").focus();
  });
  by_id("notebooks-erase-yes").addEventListener("click", () => {
    asking_erase = false;
    void erase().then(() => by_id("bar-water").focus());
  });
  by_id("notebooks-open-no").addEventListener("click", () => {
    asking_open = null;
    show();
    by_id("menu-notebooks").focus();
  });
  by_id("notebooks-open-yes").addEventListener("click", () => {
    const card = asking_open;
    asking_open = null;
    if (card) void open_card(card).then(() => by_id("bar-water").focus());
  });
  addEventListener("beforeunload", (event) => {
    if (stored_now().unsaved && stored_now().where === "nowhere") event.preventDefault();
    void write_now();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void write_now();
  });
  on_show(show_notebooks);
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
        void open_card(card).then(() => by_id("bar-water").focus());
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
