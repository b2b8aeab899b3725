// Keeps the open notebook: journals each action at once, writes the whole text a moment later, says when it is safe.

import type { Action } from "../generated/core";
import { note, settle, unnote } from "./journal";
import { storage_works, write_notebook } from "./storage";

/** Where the work is kept. */
export interface Stored {
  /** "device": this browser's store; "nowhere": refused. */
  where: "device" | "nowhere";
  /** When the last write had completed; `null` before the first. */
  at: Date | null;
  /** Changes that are not in the store and not in a saved file. */
  unsaved: boolean;
}

const PAUSE_MS = 300;

interface Open {
  id: string;
  code: string;
  notebook: string;
  /** The last action that was noted. */
  seq: number;
  /** The last one that is in `notebook`. */
  inside: number;
  /** The last one in the store. */
  written: number;
  known: boolean;
  closed: boolean;
  /** Actions went in that are in no saved file. */
  in_file: number;
}

let open: Open | null = null;
let timer: ReturnType<typeof setTimeout> | null = null;
let busy: Promise<void> | null = null;
let last: Date | null = null;
let listener: (stored: Stored, erased: boolean) => void = () => {};
let wrote: (id: string) => void = () => {};

/** Says who is told where the work is kept. */
export function on_stored(tell: (stored: Stored, erased: boolean) => void): void {
  listener = tell;
}

/** Says who is told that a notebook has been written (other tabs look at it). */
export function on_wrote(tell: (id: string) => void): void {
  wrote = tell;
}

/** Where the work is kept now. */
export function stored_now(): Stored {
  const where = storage_works() ? "device" : "nowhere";
  const unsaved = open !== null && open.seq > Math.max(open.in_file, storage_works() ? open.written : 0);
  return { where, at: last, unsaved };
}

/** A notebook has been opened for work. `seq`: the last action in `notebook`; `written`: the last one in the store. */
export function keep_open(
  id: string,
  code: string,
  notebook: string,
  seq: number,
  written: number,
  known: boolean,
): void {
  open = { id, code, notebook, seq, inside: seq, written, known, closed: false, in_file: 0 };
  last = null;
  if (seq > written) write_soon();
}

/** The notebook is open no longer, or another tab has it now: nothing more is written here. */
export function keep_nothing(): void {
  if (timer !== null) clearTimeout(timer);
  timer = null;
  open = null;
}

/** What became of a noted action. */
export interface Noted {
  seq: number;
  /** In the journal: a page that is closed now loses nothing. */
  safe: boolean;
}

/** One action will go in: the journal has it at once. */
export function note_action(id: string, action: Action): Noted {
  if (!open || open.id !== id) return { seq: 0, safe: false };
  open.seq += 1;
  if (!storage_works()) return { seq: open.seq, safe: false };
  return { seq: open.seq, safe: note(id, open.seq, action, () => void write_now()) };
}

/** The notebook with all actions up to `seq`: it is written a moment later, or now when the journal has not all of it. */
export function keep_text(id: string, code: string, notebook: string, { seq, safe }: Noted): void {
  if (!open || open.id !== id) return;
  open.code = code;
  open.notebook = notebook;
  open.inside = seq;
  if (!storage_works()) listener(stored_now(), false);
  // A journal needs the notebook it belongs to: the first action of a new one writes it whole at once.
  else if (safe && open.known) write_soon();
  else void write_now();
}

/** One action went in: journal now, the whole text a moment later. */
export function keep_action(id: string, code: string, action: Action, notebook: string): void {
  keep_text(id, code, notebook, note_action(id, action));
}

/** Noted actions that are not in the notebook were stopped: the journal forgets them. */
export function forget_stopped(id: string): void {
  if (!open || open.id !== id) return;
  open.seq = open.inside;
  unnote(id, open.inside);
}

/** The notebook was saved to a file as it stands. */
export function saved_to_file(): void {
  if (open) open.in_file = open.inside;
  listener(stored_now(), false);
}

function write_soon(): void {
  if (timer !== null) clearTimeout(timer);
  timer = setTimeout(() => void write_now(), PAUSE_MS);
}

/** Writes what is not written yet and resolves when it is. */
export async function write_now(): Promise<void> {
  if (timer !== null) clearTimeout(timer);
  timer = null;
  while (busy) await busy;
  const now = open;
  if (!now || now.written >= now.inside || !storage_works()) return;
  busy = write(now).finally(() => {
    busy = null;
  });
  await busy;
}

async function write(now: Open): Promise<void> {
  const { inside: seq, notebook } = now;
  const card = { id: now.id, code: now.code, closed: now.closed, changed: Date.now() };
  const how = await write_notebook(card, { text: notebook, seq }, now.known);
  if (how === "refused") {
    listener({ where: "nowhere", at: last, unsaved: true }, false);
    return;
  }
  now.known = true;
  now.written = Math.max(now.written, seq);
  settle(now.id, seq);
  last = new Date();
  if (open !== now) return;
  listener(stored_now(), how === "erased");
  wrote(now.id);
}
