// The class that is open: its text, how it looks, what was dropped last. It is the teacher's, and in no notebook; it is kept in
// this browser, and saved to a file by hand.

import type { ClassAction, ClassPart, ClassShown, ClassView, Taken } from "../generated/core";
import * as core from "./core";
import { show } from "./state";
import { read_class, write_class } from "./storage";

/** What the panel of Class shows. */
export type ClassPanel =
  | "list"
  | "add"
  | "answers"
  | "sheets"
  | "seat"
  | "why"
  | "marks"
  | "lesson"
  | "years"
  | "notes";

/** A class on the page. */
export interface ClassBook {
  readonly text: string;
  readonly view: ClassView;
  /** What its pictures are drawn from. */
  readonly drawing: string;
  /** What became of what was dropped last. */
  readonly taken: Taken | null;
  readonly panel: ClassPanel;
  /** A saved class that waits to be opened in place of this one, and how many sheets it holds. */
  readonly offered: { text: string; sheets: number } | null;
  /** The sheet in hand: its key. */
  readonly seat: string | null;
  /** The question in hand; `null`: the one to ask next. */
  readonly question: number | null;
  /** The cast in hand: its content id; it is set against the rest. */
  readonly against: string | null;
  /** Which picture. */
  readonly part: ClassPart;
  /** It is shown to the room. */
  readonly wall: boolean;
  /** The wall tells why those in hand differ. */
  readonly why: boolean;
  /** The wall is dark. */
  readonly blank: boolean;
  /** This browser keeps it. */
  readonly kept: boolean;
}

let book: ClassBook | null = null;

/** The class as it is; made when it is first looked at. */
export function class_book(): ClassBook {
  book ??= fresh(core.new_class(), null);
  return book;
}

function fresh(text: string, taken: Taken | null): ClassBook {
  return {
    text,
    ...core.class_look(text, null),
    taken,
    offered: null,
    panel: "list",
    seat: null,
    question: null,
    against: null,
    part: "layers",
    wall: false,
    why: false,
    blank: false,
    kept: true,
  };
}

/** Finds the class that was open last. */
export async function open_last_class(): Promise<void> {
  const text = await read_class();
  const opened = text === null ? null : core.open_class(text);
  if (opened === null || book !== null) return;
  book = fresh(opened, null);
  show();
}

/** Changes what is on the page only. */
export function set_class(change: Partial<Omit<ClassBook, "text" | "view" | "drawing">>): void {
  const before = class_book();
  const looks_anew = change.against !== undefined && change.against !== before.against;
  book = { ...before, ...change, ...(looks_anew ? core.class_look(before.text, change.against ?? null) : {}) };
  show();
}

/** One thing the teacher did to the class. */
export function class_do(action: ClassAction): void {
  const { text, against } = class_book();
  const { book: stepped, shown } = core.class_act(text, action, against);
  const { panel, seat } = class_book();
  // A sheet that counts no longer has no page of its own.
  const gone = panel === "seat" && shown.view.sheets.every((sheet) => sheet.key !== seat);
  take_in(stepped, shown, gone ? { panel: "sheets" } : {});
}

/** Takes in what was dropped or pasted; gives how many things it held. */
export function class_take(names: string[], files: Uint8Array[]): number {
  const { text, against } = class_book();
  const taken = core.class_take(text, names, files, against);
  take_in(taken.class, taken.shown, { taken, panel: "add" });
  return taken.rows.length;
}

/** Gives the class the teacher's own lesson. */
export function class_take_lesson(lesson: string): void {
  const { text, against } = class_book();
  const changed = core.class_lesson(text, lesson);
  take_in(changed, core.class_look(changed, against), {});
}

/** A class from its file: opened at once in place of an empty one, else after a question. */
export function offer_class(text: string): void {
  if (class_book().view.sheets.length === 0) {
    class_open(text);
    return;
  }
  const sheets = core.class_look(text, null).view.sheets.length;
  set_class({ offered: { text, sheets }, panel: "list", wall: false });
}

/** Opens a class in place of this one. */
export function class_open(text: string): void {
  book = fresh(text, null);
  keep();
  show();
}

/** An empty class in place of this one. */
export function class_new(): void {
  class_open(core.new_class());
}

function take_in(text: string, shown: ClassShown, change: Partial<ClassBook>): void {
  book = { ...class_book(), ...change, text, ...shown };
  keep();
  show();
}

function keep(): void {
  const kept = class_book();
  void write_class(kept.text).then((done) => {
    if (book !== null && book.kept !== done) {
      book = { ...book, kept: done };
      show();
    }
  });
}
