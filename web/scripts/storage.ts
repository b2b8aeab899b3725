// The browser's store: one IndexedDB store of JSON strings, database version 1 for ever, and localStorage for the journal
// and the settings. Either may be refused; nothing here throws for that reason.

import { createStore, promisifyRequest, type UseStore } from "idb-keyval";

/** What the list of notebooks knows of one: never the water, never the readings. */
export interface Card {
  id: string;
  code: string;
  /** Closed by "New group": opening it asks first. */
  closed: boolean;
  /** Last change, milliseconds since 1970. */
  changed: number;
}

/** A notebook as it is stored: its text and the number of the last action in it. */
export interface Kept {
  text: string;
  seq: number;
}

let records: UseStore | null = null;

/** Opens the store and tries it. False: this browser keeps nothing. */
export async function open_storage(): Promise<boolean> {
  try {
    const store = createStore("layercast", "records");
    await store("readwrite", (all) => {
      all.put("1", "probe");
      return promisifyRequest(all.transaction);
    });
    records = store;
  } catch {
    records = null;
  }
  return records !== null;
}

/** Whether the store can be used. */
export function storage_works(): boolean {
  return records !== null;
}

/** The notebooks on this device, newest change first. */
export async function list_cards(): Promise<Card[]> {
  const found: Card[] = [];
  for (const text of await values_from("card:")) {
    const card = parsed<Card>(text);
    if (card?.id) found.push(card);
  }
  return found.sort((a, b) => b.changed - a.changed);
}

/** The stored text of a notebook. */
export async function read_notebook(id: string): Promise<Kept | null> {
  if (!records) return null;
  const text = await records("readonly", (all) => promisifyRequest<unknown>(all.get(`notebook:${id}`)));
  return typeof text === "string" ? parsed<Kept>(text) : null;
}

/** How a write went: "erased" means that the browser had thrown away what it kept before. */
export type Written = "kept" | "erased" | "refused";

/**
 * Writes a notebook, its card, and forgets the journal up to it, all in one transaction. `known`: it has been written
 * before, so a missing card means that the store was emptied in the meantime.
 */
export async function write_notebook(card: Card, kept: Kept, known: boolean): Promise<Written> {
  if (!records) return "refused";
  try {
    let missing = false;
    await records("readwrite", (all) => {
      const written = promisifyRequest(all.transaction);
      const put = () => {
        all.put(JSON.stringify(card), `card:${card.id}`);
        all.put(JSON.stringify(kept), `notebook:${card.id}`);
        all.put(card.id, "open");
        all.delete(IDBKeyRange.bound(`journal:${card.id}:`, `journal:${card.id}:${order(kept.seq)}`));
        all.transaction.commit(); // without waiting for its answers first: one way less until a key is safe
      };
      if (!known) put();
      else {
        all.getKey(`card:${card.id}`).onsuccess = (event) => {
          missing = (event.target as IDBRequest).result === undefined;
          put();
        };
      }
      return written;
    });
    return known && missing ? "erased" : "kept";
  } catch {
    return "refused";
  }
}

/** The notebook that was open last; not in localStorage, which a browser that is killed may not have written yet. */
export async function read_open(): Promise<string | null> {
  if (!records) return null;
  const id = await records("readonly", (all) => promisifyRequest<unknown>(all.get("open"))).catch(() => null);
  return typeof id === "string" ? id : null;
}

/** Remembers the notebook that is open, or that none is. */
export async function write_open(id: string | null): Promise<void> {
  await records?.("readwrite", (all) => {
    if (id === null) all.delete("open");
    else all.put(id, "open");
    return promisifyRequest(all.transaction);
  }).catch(() => {});
}

/** The class that was open last, as its text. */
export function read_class(): Promise<string | null> {
  return read_text("class");
}

/** Keeps the class. False: this browser does not keep it. */
export function write_class(text: string): Promise<boolean> {
  return write_text("class", text);
}

/** The lesson that was being made. */
export function read_lesson(): Promise<string | null> {
  return read_text("lesson");
}

/** Keeps the lesson that is being made. False: this browser does not keep it. */
export function write_lesson(text: string): Promise<boolean> {
  return write_text("lesson", text);
}

/** The year book. */
export function read_years(): Promise<string | null> {
  return read_text("years");
}

/** Keeps the year book. False: this browser does not keep it. */
export function write_years(text: string): Promise<boolean> {
  return write_text("years", text);
}

async function read_text(name: string): Promise<string | null> {
  if (!records) return null;
  const text = await records("readonly", (all) => promisifyRequest<unknown>(all.get(name))).catch(() => null);
  return typeof text === "string" ? text : null;
}

async function write_text(name: string, text: string): Promise<boolean> {
  if (!records) return false;
  return records("readwrite", (all) => {
    all.put(text, name);
    return promisifyRequest(all.transaction);
  }).then(
    () => true,
    () => false,
  );
}

/** Changes the card of a notebook alone. */
export async function write_card(card: Card): Promise<void> {
  await records?.("readwrite", (all) => {
    all.put(JSON.stringify(card), `card:${card.id}`);
    return promisifyRequest(all.transaction);
  }).catch(() => {});
}

/** Erases a notebook and everything written about it. */
export async function erase_records(id: string): Promise<void> {
  await records?.("readwrite", (all) => {
    all.delete(`card:${id}`);
    all.delete(`notebook:${id}`);
    all.delete(IDBKeyRange.bound(`journal:${id}:`, `journal:${id}:\uFFFF`));
    return promisifyRequest(all.transaction);
  });
}

/** Writes one line of the journal. */
export async function write_line(id: string, seq: number, line: string): Promise<void> {
  if (!records) throw new Error("no store");
  await records("readwrite", (all) => {
    all.put(line, `journal:${id}:${order(seq)}`);
    const written = promisifyRequest(all.transaction);
    all.transaction.commit();
    return written;
  });
}

/** Erases the lines after `seq`. */
export async function drop_lines(id: string, seq: number): Promise<void> {
  await records?.("readwrite", (all) => {
    all.delete(IDBKeyRange.bound(`journal:${id}:${order(seq + 1)}`, `journal:${id}:\uFFFF`));
    return promisifyRequest(all.transaction);
  }).catch(() => {});
}

/** The lines of a notebook's journal, in order. */
export async function read_lines(id: string): Promise<string[]> {
  return values_from(`journal:${id}:`);
}

async function values_from(start: string): Promise<string[]> {
  if (!records) return [];
  const all = await records("readonly", (store) =>
    promisifyRequest<unknown[]>(store.getAll(IDBKeyRange.bound(start, `${start}\uFFFF`))),
  );
  return all.filter((one): one is string => typeof one === "string");
}

/** Numbers as text that sorts like numbers. */
function order(seq: number): string {
  return String(seq).padStart(12, "0");
}

/** JSON that may be anything: `null` when it is no JSON. */
export function parsed<T>(text: string): T | null {
  try {
    return JSON.parse(text) as T;
  } catch {
    return null;
  }
}

/** Runs with localStorage, or gives `null` where touching it is refused or it is full. */
export function with_local<T>(use: (local: Storage) => T): T | null {
  try {
    return use(localStorage);
  } catch {
    return null;
  }
}

/** A setting of this page (theme, language, text size). */
export function read_setting(name: string): string | null {
  return with_local((local) => local.getItem(`layercast.${name}`));
}

/** Keeps a setting, where that is allowed; `null` forgets it. */
export function write_setting(name: string, value: string | null): void {
  with_local((local) => {
    if (value === null) local.removeItem(`layercast.${name}`);
    else local.setItem(`layercast.${name}`, value);
  });
}

/** The notebook this tab had open, so that a reload finds it again. */
export function read_tab(): string | null {
  try {
    return sessionStorage.getItem("layercast.open");
  } catch {
    return null;
  }
}

/** Remembers the notebook this tab has open. */
export function write_tab(id: string): void {
  try {
    sessionStorage.setItem("layercast.open", id);
  } catch {
    // refused: a reload then opens the notebook that was open last
  }
}
