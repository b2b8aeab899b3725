// The journal: every action goes at once to localStorage and to IndexedDB, and is taken away when a whole notebook with it
// has been written. On opening, lines newer than the stored text are applied again.

import type { Action } from "../generated/core";
import { drop_lines, parsed, read_lines, with_local, write_line } from "./storage";

interface Line {
  seq: number;
  action: Action;
}

/** Longer actions (a pasted table) are not journalled: the whole notebook is written at once instead. */
const LONGEST_LINE = 200_000;

function key(id: string): string {
  return `layercast.journal.${id}.`;
}

/** Notes an action. False when neither place took it, or it is too long: the whole notebook must be written now. */
export function note(id: string, seq: number, action: Action, refused: () => void): boolean {
  const line = JSON.stringify({ seq, action } satisfies Line);
  if (line.length > LONGEST_LINE) return false;
  with_local((local) => local.setItem(key(id) + seq, line));
  write_line(id, seq, line).catch(refused);
  return true;
}

/** Forgets the lines up to and with `seq` in localStorage; those in IndexedDB went with the write. */
export function settle(id: string, seq: number): void {
  with_local((local) => {
    for (const name of names(local, id)) if (Number(name.slice(key(id).length)) <= seq) local.removeItem(name);
  });
}

/** Forgets the lines after `seq`: what was to be done was stopped. */
export function unnote(id: string, seq: number): void {
  with_local((local) => {
    for (const name of names(local, id)) if (Number(name.slice(key(id).length)) > seq) local.removeItem(name);
  });
  void drop_lines(id, seq);
}

/** Forgets every line of a notebook in localStorage. */
export function forget(id: string): void {
  settle(id, Number.MAX_SAFE_INTEGER);
}

/** The actions after `seq`, as far as none is missing in between. */
export async function newer(id: string, seq: number): Promise<Line[]> {
  const lines = new Map<number, Action>();
  const take = (text: string | null) => {
    const line = text === null ? null : parsed<Line>(text);
    if (line && typeof line.seq === "number" && line.action) lines.set(line.seq, line.action);
  };
  with_local((local) => names(local, id).map((name) => local.getItem(name)))?.forEach(take);
  (await read_lines(id)).forEach(take);
  const found: Line[] = [];
  for (let next = seq + 1; lines.has(next); next += 1) {
    const action = lines.get(next);
    if (action) found.push({ seq: next, action });
  }
  return found;
}

function names(local: Storage, id: string): string[] {
  return Object.keys(local).filter((name) => name.startsWith(key(id)));
}
