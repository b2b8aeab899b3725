// Class, why they differ: one group against another or against the rest, in words.

import type { WhyView } from "../../generated/core";
import { begin_busy } from "../busy";
import { class_book } from "../class_state";
import { Stopped } from "../core";
import { by_id, list, part, set_text, template, toggle } from "../dom";
import type { Job } from "../jobs";
import { beside, Halted } from "../long";
import { say, say_into, t } from "../say";
import { show } from "../state";
import { type Option, options } from "./class_sheets";

let asked = "";
let told: WhyView | null = null;

/** What was found last, and the cast it is about; `null` when nothing was asked, or the class has changed since. */
export function why_told(): { view: WhyView; one: string } | null {
  return told === null || !asked.endsWith(stamp()) ? null : { view: told, one: asked.split(" ", 1)[0] ?? "" };
}

/** The casts that are compared, by content id; without `other` one is set against the rest. */
export function why_pair(): { one: string; other: string | null } | null {
  const [one, other] = asked.split(" ", 2);
  return one ? { one, other: other || null } : null;
}

/** What changes with the class. */
function stamp(): string {
  const { text } = class_book();
  return `${text.length} ${text.slice(-400)}`;
}

/** Wires the two lists. */
export function mount_why(el: HTMLElement): void {
  el.addEventListener("change", show);
}

/** Tells why, once for each pair. */
export function show_why(el: HTMLElement): void {
  const { view, text } = class_book();
  const one = by_id<HTMLSelectElement>("class-one");
  const other = by_id<HTMLSelectElement>("class-other");
  const casts = view.casts.map((cast): Option => [cast.cast_id, cast.name]);
  options(one, casts);
  // Nothing differs from itself.
  options(other, [["", t("class-why-rest")], ...casts.filter(([id]) => id !== one.value)]);
  // How long lies between one and many others, nobody can say.
  toggle(part(el, "clock"), other.value !== "");
  const minutes = by_id<HTMLInputElement>("class-minutes").value;
  const later = by_id<HTMLSelectElement>("class-when").value === "later";
  const key = `${one.value} ${other.value} ${minutes} ${later} ${stamp()}`;
  if (key !== asked) {
    asked = key;
    told = null;
    if (one.value !== "" && other.value !== one.value) {
      void find_out(key, { do: "why", book: text, one: one.value, other: other.value || null, minutes, later });
    }
  }
  set_text(part(el, "pair"), told === null ? "" : say(told.title));
  list(part(el, "said"), template("template-line"), told?.said ?? [], (line, said) => say_into(line, said));
  list(part(el, "causes"), template("template-class-cause"), told?.causes ?? [], (row, cause) => {
    say_into(part(row, "name"), cause.name);
    say_into(part(row, "said"), cause.said);
    row.classList.toggle("on", cause.possible);
  });
}

/** Thousands of casts drawn by chance take a while: the worker compares. */
async function find_out(key: string, job: Extract<Job, { do: "why" }>): Promise<void> {
  const busy = begin_busy(["sure"], null, { quiet: true });
  try {
    const found = await beside(job, busy, "sure");
    if (key !== asked) return;
    told = found;
    show();
  } catch (error) {
    asked = "";
    if (!(error instanceof Halted) && !(error instanceof Stopped)) throw error;
  } finally {
    busy.end();
  }
}
