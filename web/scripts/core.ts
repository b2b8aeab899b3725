// Every call into the calculation goes through here. It keeps nothing between calls, so a stop loses nothing: the page says
// so, makes a fresh instance and goes on with the notebook it still has.

import type {
  Action,
  AnswerTold,
  ClassAction,
  ClassRequest,
  ClassShown,
  ClassStepped,
  LessonAction,
  LessonView,
  Look,
  Opened,
  PictureRequest,
  PictureWords,
  PlacementView,
  Screen,
  Slip,
  SmallRequest,
  Stepped,
  Taken,
  YearsAction,
  YearsTaken,
  YearsView,
} from "../generated/core";
import start, * as wasm from "../generated/core";
import { wasm_module } from "./inlined";
import { type Done, do_job, type Job } from "./jobs";

/** The names of the examples. */
export type ExampleName = "layered-summer" | "mixed-autumn" | "under-ice";

/** The calculation stopped in the middle of a call. */
export class Stopped extends Error {}

let stopped_listener: (what: string) => void = () => {};

/** Says who is told when a call stops. */
export function on_stopped(listener: (what: string) => void): void {
  stopped_listener = listener;
}

/** Makes the first instance. */
export async function start_core(): Promise<void> {
  await start({ module_or_path: await wasm_module() });
}

function guarded<T>(what: string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!(error instanceof WebAssembly.RuntimeError)) throw error;
    wasm.__wbg_reset_state();
    throw stopped(`${what}: ${error.message}\n${error.stack ?? ""}`);
  }
}

/** Says that a call has stopped, here or beside the page, and gives the error to throw. */
export function stopped(happened: string): Stopped {
  stopped_listener(happened);
  return new Stopped(happened);
}

/** Does here what else is done beside the page. */
export function here<J extends Job>(job: J): Done[J["do"]] {
  return guarded(job.do, () => do_job(wasm, job, () => {})) as Done[J["do"]];
}

/** A new, empty notebook. */
export function new_notebook(code: string): string {
  return guarded("new_notebook", () => wasm.new_notebook(code));
}

/** What a file's bytes hold. */
export function open_bytes(bytes: Uint8Array): Opened {
  return guarded("open_bytes", () => wasm.open_bytes(bytes));
}

/** What the trials of a notebook came to; it goes with every look at one and counts only for the readings it was made of. */
let ranges: string | null = null;

/** Takes in what the trials came to, or forgets it. */
export function know_ranges(text: string | null): void {
  ranges = text;
  known = null;
}

/** What the trials came to. */
export function known_ranges(): string | null {
  return ranges;
}

/** The notebook after one thing a person did, and everything the page shows of it. */
export function step(notebook: string, action: Action): Stepped {
  return guarded(`step ${action.do}`, () => wasm.step(notebook, action, ranges));
}

/** Everything the page shows of a notebook. */
export function look(notebook: string): Look {
  return guarded("look", () => wasm.look(notebook, ranges));
}

interface Known {
  notebook: string;
  screen: Screen;
  words: PictureWords;
}

let known: Known | null = null;

/** The words of a notebook that was changed beside the page came with it. */
export function know_words(those: Known): void {
  known = those;
}

/** Whether the words are at hand. */
export function knows_words(notebook: string, screen: Screen): boolean {
  return known?.notebook === notebook && known.screen === screen;
}

/** The words of a screen's picture. */
export function words(notebook: string, screen: Screen): PictureWords {
  if (known?.notebook === notebook && known.screen === screen) return known.words;
  return guarded("words", () => wasm.words(notebook, screen, ranges));
}

/** Draws a screen's picture; `null` when the calculation stopped, which has then been said. */
export function draw(canvas: HTMLCanvasElement, notebook: string, request: PictureRequest): PlacementView | null {
  try {
    return guarded("draw", () => wasm.draw(canvas, notebook, request, ranges));
  } catch (error) {
    if (error instanceof Stopped) return null;
    throw error;
  }
}

/** Draws a small picture of a question; false when the calculation stopped, which has then been said. */
export function draw_small(canvas: HTMLCanvasElement, request: SmallRequest): boolean {
  try {
    guarded("draw_small", () => wasm.draw_small(canvas, request));
    return true;
  } catch (error) {
    if (error instanceof Stopped) return false;
    throw error;
  }
}

/** The same picture as an SVG document. */
export function svg(notebook: string, request: PictureRequest, title: string): string {
  return guarded("svg", () => wasm.svg(notebook, request, title, ranges));
}

/** What is handed in: the file's text. */
export function hand_in_file(notebook: string): string {
  return guarded("hand_in_file", () => wasm.hand_in_file(notebook));
}

/** The same as checked lines. */
export function hand_in_lines(notebook: string): string {
  return guarded("hand_in_lines", () => wasm.hand_in_lines(notebook));
}

/** The short code a student keeps. */
export function receipt(notebook: string): string {
  return guarded("receipt", () => wasm.receipt(notebook));
}

/** The readings as a comma-separated table. */
export function readings_table(notebook: string): string {
  return guarded("readings_table", () => wasm.readings_table(notebook, ranges));
}

/** What its columns mean. */
export function readings_sidecar(name: string): string {
  return guarded("readings_sidecar", () => wasm.readings_sidecar(name));
}

/** The record of the cast's quality. */
export function quality_record(notebook: string): string {
  return guarded("quality_record", () => wasm.quality_record(notebook, ranges));
}

/** The table of an example. */
export function example(name: ExampleName): string {
  return guarded("example", () => wasm.example(name));
}

/** The profile as tones: second, hertz, row of the readings' table, one after the other. */
export function hear(notebook: string): Float64Array {
  return guarded("hear", () => wasm.hear(notebook));
}

/** The profile as a page to be raised. */
export function touch(notebook: string, head: string, depth: string, temperature: string): string {
  return guarded("touch", () => wasm.touch(notebook, head, depth, temperature));
}

// A lesson in the making.

/** The lesson of new notebooks, or the one with every question. */
export function lesson_of_ours(whole: boolean): string {
  return guarded("lesson_of_ours", () => wasm.lesson_of_ours(whole));
}

/** The lesson after one thing a teacher did. */
export function lesson_act(lesson: string, action: LessonAction): string {
  return guarded(`lesson_act ${action.do}`, () => wasm.lesson_act(lesson, action));
}

/** Everything the page shows of a lesson. */
export function lesson_look(lesson: string): LessonView {
  return guarded("lesson_look", () => wasm.lesson_look(lesson));
}

// The year book.

/** The book with the casts of files; empty text: a new one. */
export function years_add(book: string, files: readonly Uint8Array[]): YearsTaken {
  return guarded("years_add", () => wasm.years_add(book, [...files]));
}

/** The book after one thing a teacher did. */
export function years_act(book: string, action: YearsAction): string {
  return guarded(`years_act ${action.do}`, () => wasm.years_act(book, action));
}

/** Everything the page shows of a book. */
export function years_look(book: string, chosen: string): YearsView {
  return guarded("years_look", () => wasm.years_look(book, chosen));
}

/** What its picture is drawn from. */
export function years_drawing(book: string): string {
  return guarded("years_drawing", () => wasm.years_drawing(book));
}

// The class.

/** An empty class. */
export function new_class(): string {
  return guarded("new_class", () => wasm.new_class());
}

/** The class in a file's text, if it is one. */
export function open_class(text: string): string | null {
  return guarded("open_class", () => wasm.open_class(text)) ?? null;
}

/** The class with what was dropped, and a row for each thing. */
export function class_take(book: string, names: string[], files: Uint8Array[], against: string | null): Taken {
  return guarded("class_take", () => wasm.class_take(book, names, files, against));
}

/** The class after one thing a teacher did. */
export function class_act(book: string, action: ClassAction, against: string | null): ClassStepped {
  return guarded(`class_act ${action.do}`, () => wasm.class_act(book, action, against));
}

/** The class with the teacher's own lesson. */
export function class_lesson(book: string, lesson: string): string {
  return guarded("class_lesson", () => wasm.class_lesson(book, lesson));
}

/** Everything the page shows of a class. */
export function class_look(book: string, against: string | null): ClassShown {
  return guarded("class_look", () => wasm.class_look(book, against));
}

/** Marks as CSV. */
export function class_csv(
  book: string,
  wide: boolean,
  comma: boolean,
  students: string,
  names: ReadonlyMap<number, string>,
): string {
  const kinds = new Uint8Array(names.keys());
  return guarded("class_csv", () => wasm.class_csv(book, wide, comma, students, kinds, [...names.values()]));
}

/** What goes back to each seat. */
export function class_slips(book: string): Slip[] {
  return guarded("class_slips", () => wasm.class_slips(book)).slips;
}

/** What a teacher marks a sheet by. */
export function class_told(book: string, key: string): AnswerTold[] {
  return guarded("class_told", () => wasm.class_told(book, key)).answers;
}

/** A zip of files. */
export function zip_of(names: string[], files: Uint8Array[]): Uint8Array<ArrayBuffer> {
  return guarded("zip_of", () => wasm.zip_of(names, files)) as Uint8Array<ArrayBuffer>;
}

/** Draws a picture of the class. */
export function class_draw(canvas: HTMLCanvasElement, drawing: string, request: ClassRequest): void {
  guarded("class_draw", () => wasm.class_draw(canvas, drawing, request));
}
