// Files in and out: choosing, dropping, pasting, saving. What a file's bytes mean is decided by the calculation.

import * as core from "./core";
import { by_id, focus_seen, is_field, painted, toggle } from "./dom";
import { open_made, open_table } from "./notebooks";
import { speak, t } from "./say";
import { dispatch, type FileTrouble, set_ui, state } from "./state";

/** Larger files are refused in words. */
const LARGEST_BYTES = 20_000_000;
/** From this size on the page says what it is doing before it begins. */
const BUSY_FROM = 200_000;

let arrived: () => void = () => {};

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
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void open_file(file);
  });
  document.addEventListener("paste", (event) => {
    if (state().look.place.screen !== "log" || !event.clipboardData) return;
    const text = table_of(event.clipboardData);
    const into = event.target;
    const pasting = into instanceof HTMLElement && into.id === "paste-field";
    // One value goes into the field it is pasted into; a table is a table wherever it is pasted.
    if (!text || (is_field(into) && !pasting && !/[\t\n]/.test(text.trim()))) return;
    event.preventDefault();
    void take_text(text);
  });
}

/** A table or a saved notebook as text. */
export async function take_text(text: string): Promise<void> {
  if (/^\s*\{/.test(text)) {
    const opened = core.open_bytes(new TextEncoder().encode(text));
    if (opened.kind !== "table" && opened.kind !== "no") {
      await take_opened(opened, t("page-paste-name"));
      return;
    }
  }
  await take_table(text);
}

async function open_file(file: File): Promise<void> {
  if (file.size > LARGEST_BYTES) {
    refuse({ kind: "large", name: file.name });
    return;
  }
  if (file.size > BUSY_FROM) await say_busy();
  try {
    await take_opened(core.open_bytes(new Uint8Array(await file.arrayBuffer())), file.name);
  } catch (error) {
    if (!(error instanceof core.Stopped)) throw error;
  } finally {
    set_ui({ busy: null });
  }
}

async function take_opened(opened: ReturnType<typeof core.open_bytes>, name: string): Promise<void> {
  switch (opened.kind) {
    case "notebook":
      await open_made(opened.notebook);
      break;
    case "newer":
      refuse({ kind: "newer", name, version: opened.version, readings: opened.readings });
      break;
    case "table":
      await take_table(opened.text);
      break;
    case "no":
      refuse({ kind: "no", name, said: opened.said });
      break;
  }
}

function refuse(file: FileTrouble): void {
  if (state().look.place.screen !== "log") dispatch({ do: "go", screen: "log", question: null });
  set_ui({ file, pasting: false, menu: null });
  focus_seen(by_id(file.kind === "newer" ? "newer-leave" : "no-open"));
}

async function take_table(text: string): Promise<void> {
  if (text.length > BUSY_FROM) await say_busy();
  try {
    if (state().look.place.screen !== "log") dispatch({ do: "go", screen: "log", question: null });
    if (state().writable) dispatch({ do: "paste", text });
    else await open_table(text);
  } finally {
    set_ui({ busy: null, pasting: false, file: null });
  }
  arrived();
}

async function say_busy(): Promise<void> {
  set_ui({ busy: "page-busy-reading" });
  await painted();
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
export function save_file(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: "application/json" }));
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
