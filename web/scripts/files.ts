// Files in and out: choosing, dropping, pasting, saving. What a file's bytes mean is decided by the calculation.

import type { Opened, Screen } from "../generated/core";
import { begin_busy } from "./busy";
import { set_class } from "./class_state";
import * as core from "./core";
import { by_id, focus_seen, is_field, toggle } from "./dom";
import { beside, Halted, halt, is_long_file } from "./long";
import { open_made, open_table } from "./notebooks";
import { speak, t } from "./say";
import { dispatched, type FileTrouble, idle, set_ui, state } from "./state";

/** Larger files are refused in words. */
const LARGEST_BYTES = 20_000_000;

let arrived: () => void = () => {};
let into_class: (files: readonly File[]) => Promise<boolean> = () => Promise.resolve(false);

/** Says who takes files that are dropped while the class is on the screen. */
export function on_class_files(taker: (files: readonly File[]) => Promise<boolean>): void {
  into_class = taker;
}

/** Says who is told when a table has come in (the focus goes to its first question). */
export function on_arrived(listener: () => void): void {
  arrived = listener;
}

/** Lets the person choose a file. */
export function pick_file(): void {
  by_id<HTMLInputElement>("file-field").click();
}

/** Wires the file field, dropping anywhere and pasting on Log. */
export function mount_files(): void {
  const field = by_id<HTMLInputElement>("file-field");
  field.addEventListener("change", () => {
    const file = field.files?.[0];
    if (file) void open_file(file).finally(() => (field.value = ""));
  });
  const here = by_id("drop-here");
  const how = by_id<HTMLDialogElement>("how");
  addEventListener("dragover", (event) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    toggle(here, true);
  });
  addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) toggle(here, false);
  });
  addEventListener("drop", (event) => {
    toggle(here, false);
    const files = [...(event.dataTransfer?.files ?? [])];
    const [file] = files;
    if (!file) return;
    event.preventDefault();
    how.close();
    void into_class(files).then((taken) => (taken ? undefined : open_file(file)));
  });
  document.addEventListener("paste", (event) => {
    if (state().look.place.screen !== "log" || how.open || !event.clipboardData) return;
    const text = table_of(event.clipboardData);
    const into = event.target;
    const pasting = into instanceof HTMLElement && into.id === "paste-field";
    // One value goes into the field it is pasted into; a table is a table wherever it is pasted.
    if (!text || (is_field(into) && !pasting && !/[\t\n]/.test(text.trim()))) return;
    event.preventDefault();
    void take_text(text);
  });
}

/** A table or a saved notebook as text. False: it was stopped. */
export function take_text(text: string): Promise<boolean> {
  return unless_stopped(async () => {
    // A document of ours, or the lines of a hand-in: the calculation tells.
    if (/^\s*\{|\bLC [0-9A-Z]{4} \d/.test(text)) {
      const opened = await opened_from(new TextEncoder().encode(text));
      if (opened.kind !== "table" && opened.kind !== "no") return take_opened(opened, t("page-paste-name"));
    }
    return take_table(text, "paste");
  });
}

async function open_file(file: File): Promise<void> {
  if (file.size > LARGEST_BYTES) return refuse({ kind: "large", name: file.name });
  // One line from the first byte to the layers.
  const busy = is_long_file(file.size) ? begin_busy(["reading", "table", "calculating"], halt) : null;
  await unless_stopped(async () => {
    const opened = await opened_from(new Uint8Array(await file.arrayBuffer()));
    return take_opened(opened, file.name);
  }).finally(() => busy?.end());
}

async function opened_from(bytes: Uint8Array): Promise<Opened> {
  if (!is_long_file(bytes.length)) return core.open_bytes(bytes);
  const busy = begin_busy(["reading", "table", "calculating"], halt);
  try {
    return await beside({ do: "open", bytes }, busy, "reading");
  } finally {
    busy.end();
  }
}

/** A stop, by hand or by itself, has been said already; the work before is as it was. */
async function unless_stopped(what: () => Promise<boolean>): Promise<boolean> {
  try {
    return await what();
  } catch (error) {
    if (!(error instanceof core.Stopped) && !(error instanceof Halted)) throw error;
    return false;
  }
}

async function take_opened(opened: Opened, name: string): Promise<boolean> {
  switch (opened.kind) {
    case "notebook":
      return open_made(opened.notebook);
    case "newer":
      await refuse({ kind: "newer", name, version: opened.version, readings: opened.readings });
      return true;
    case "lesson":
      await refuse({ kind: "lesson", name, lesson: opened });
      return true;
    case "class":
      await to_screen("class");
      set_class({ panel: "list" });
      return into_class([new File([opened.class], name)]);
    case "table":
      return take_table(opened.text, "take_file");
    case "no":
      await refuse({ kind: "no", name, said: opened.said });
      return true;
  }
}

/** What has the focus when a file is asked about or refused. */
const FIRST_WAY = { newer: "newer-leave", lesson: "lesson-take", no: "no-open", large: "no-open" } as const;

async function refuse(file: FileTrouble): Promise<void> {
  await to_log();
  set_ui({ file, pasting: false, menu: null });
  focus_seen(by_id(FIRST_WAY[file.kind]));
}

const to_log = (): Promise<void> => to_screen("log");

async function to_screen(screen: Screen): Promise<void> {
  await idle();
  if (state().look.place.screen !== screen) await dispatched({ do: "go", screen, question: null });
}

async function take_table(text: string, how: "paste" | "take_file"): Promise<boolean> {
  await to_log();
  const went_in = await (state().writable ? dispatched({ do: how, text }) : open_table(text, how));
  if (!went_in) return false;
  set_ui({ pasting: false, file: null });
  arrived();
  return true;
}

/** The text of a paste: plain text, unless only the HTML of it holds a table. */
function table_of(data: DataTransfer): string {
  const plain = data.getData("text/plain");
  if (plain.includes("\t")) return plain;
  const html = data.getData("text/html");
  if (!/<table/i.test(html)) return plain;
  // Nothing of it runs or loads; without its event attributes the browser has nothing to complain about either.
  const still = html.replaceAll(/\son[a-z]+\s*=/gi, " data-was=");
  const rows = new DOMParser().parseFromString(still, "text/html").querySelectorAll("tr");
  const lines = [...rows].map((row) => [...row.querySelectorAll("td, th")].map(cell_text).join("\t"));
  return lines.some((line) => line.includes("\t")) ? lines.join("\n") : plain;
}

function cell_text(cell: Element): string {
  return (cell.textContent ?? "").replace(/\s+/g, " ").trim();
}

/** Gives a text to the browser as a file to keep. */
export function save_file(name: string, content: string | Blob, type = "application/json"): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  speak(t("page-notebooks-saved", { name }));
}

/** Copies a text, where the browser saves no files; says how it went. */
export function copy_as_text(text: string): void {
  const copying = navigator.clipboard?.writeText(text) ?? Promise.reject(new Error("no clipboard"));
  copying.then(
    () => speak(t("page-copied")),
    () => speak(t("page-not-copied")),
  );
}
