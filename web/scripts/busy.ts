// The busy line: what is being done, how many of its parts are done, and Stop. It comes after half a second; the bar moves
// only when a part has been done. Esc stops too.

import { by_id, focus_seen, set_text, toggle } from "./dom";
import { speak, t } from "./say";

/** The parts of long work, by what they are called. */
export type Step = "reading" | "table" | "change" | "opening" | "calculating" | "sure" | "drawing";

/** A line that has begun. */
export interface Busy {
  /** This part has begun. */
  step(step: Step): void;
  /** So much of the present part is done. */
  part(done: number, of: number): void;
  /** All is done, or has been stopped. */
  end(): void;
}

/** Under this nothing is said, milliseconds. */
const UNSAID_MS = 400;

interface Line {
  steps: readonly Step[];
  at: number;
  /** How much of the present part is done. */
  part: { done: number; of: number } | null;
  /** It goes on beside other work and does not draw the focus. */
  quiet: boolean;
  /** How many have begun it: what is done inside other work uses the line of that. */
  users: number;
  stop: (() => void) | null;
  timer: ReturnType<typeof setTimeout> | null;
}

let line: Line | null = null;
let focus_before: HTMLElement | null = null;

/** Wires Stop. */
export function mount_busy(): void {
  by_id("busy-stop").addEventListener("click", stop);
  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || event.defaultPrevented || by_id("busy").hidden || !line?.stop) return;
    event.preventDefault();
    stop();
  });
}

/**
 * Begins a line, or joins the one that is there. `stop` ends the work; without it there is nothing to press. `quiet`: it
 * does not draw the focus, since the person goes on with something else.
 */
export function begin_busy(
  steps: readonly Step[],
  stop_work: (() => void) | null,
  { quiet = false }: { quiet?: boolean } = {},
): Busy {
  if (line) line.users += 1;
  else {
    line = { steps, at: 0, part: null, quiet, users: 1, stop: stop_work, timer: null };
    line.timer = setTimeout(show_line, UNSAID_MS);
  }
  const mine = line;
  let ended = false;
  return {
    step(step) {
      const at = mine.steps.indexOf(step);
      if (line !== mine || at < 0) return;
      if (mine.at !== at) mine.part = null;
      mine.at = at;
      if (!by_id("busy").hidden) show_line();
    },
    part(done, of) {
      if (line !== mine) return;
      mine.part = { done, of };
      if (!by_id("busy").hidden) show_line();
    },
    end() {
      if (ended) return;
      ended = true;
      mine.users -= 1;
      if (mine.users > 0 || line !== mine) return;
      close();
    },
  };
}

/** Shows the line now: the page is about to stand still. */
export function show_busy_now(): void {
  show_line();
}

function show_line(): void {
  if (!line) return;
  const { steps, at, part } = line;
  const busy = by_id("busy");
  set_text(by_id("busy-what"), words_of(steps[at]));
  const step = steps.length > 1 ? t("page-busy-step", { step: at + 1, of: steps.length }) : "";
  set_text(by_id("busy-step"), part === null ? step : t("page-busy-part", { ...part }));
  const inside = part === null ? 0 : part.done / part.of;
  by_id("busy-bar").style.setProperty("width", `${Math.round((100 * (at + inside)) / steps.length)}%`);
  set_text(by_id("busy-keeps"), line.quiet ? t("page-busy-keeps") : t("page-busy-stop-about"));
  toggle(by_id("busy-ways"), line.stop !== null);
  if (!busy.hidden) return;
  toggle(busy, true);
  const at_now = document.activeElement;
  focus_before = at_now instanceof HTMLElement && at_now !== document.body ? at_now : null;
  if (!focus_before && line.stop && !line.quiet) focus_seen(by_id("busy-stop"));
}

function words_of(step: Step | undefined): string {
  switch (step) {
    case "reading":
      return t("page-busy-reading");
    case "table":
      return t("page-busy-table");
    case "change":
      return t("page-busy-change");
    case "opening":
      return t("page-busy-opening");
    case "calculating":
      return t("page-busy-calculating");
    case "sure":
      return t("page-busy-sure");
    default:
      return t("page-busy-drawing");
  }
}

function stop(): void {
  const now = line;
  if (!now?.stop) return;
  close();
  now.stop();
  speak(now.quiet ? t("page-busy-stopped-part") : t("page-busy-stopped"));
}

function close(): void {
  if (line?.timer) clearTimeout(line.timer);
  line = null;
  const busy = by_id("busy");
  const held = busy.contains(document.activeElement);
  toggle(busy, false);
  if (held) (focus_before?.checkVisibility() ? focus_before : panel_of(busy))?.focus();
  focus_before = null;
}

function panel_of(busy: HTMLElement): HTMLElement | null {
  return busy.closest<HTMLElement>("[data-panel], [tabindex]");
}
