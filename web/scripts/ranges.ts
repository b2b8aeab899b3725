// How sure each depth is: the whole analysis thousands of times over, beside the page and in parts, so that the busy line
// moves on and Stop keeps what there is. It begins on Profile, and again when the readings change.

import type { Otherwise, OtherwiseView } from "../generated/core";
import { begin_busy } from "./busy";
import * as core from "./core";
import { beside, Halted } from "./long";
import { on_show, type State, set_ranges, show, state } from "./state";

/** Trials in one part: a part takes some hundredths of a second. */
const PART = 500;

/** What the trials are of that run now, and of which none are to be run any more: they were stopped before the first part. */
let running: string | null = null;
let given_up: string | null = null;

/** Sees to it that the ranges come from trials. */
export function mount_ranges(): void {
  on_show((s) => {
    const { key, wanted, trials } = s.look.ranges;
    if (!wanted || s.look.place.screen !== "profile" || running !== null || key === given_up) return;
    running = key;
    void make_ranges(s, key, trials);
  });
}

async function make_ranges({ notebook }: Readonly<State>, key: string, trials: number): Promise<void> {
  try {
    const drawn = await draw(notebook, null, trials, () => state().look.ranges.key === key);
    if (drawn === null) return;
    if (drawn.length === 0) {
      given_up = key;
      return;
    }
    const busy = begin_busy(["sure"], null, { quiet: true });
    try {
      const ranges = await beside({ do: "ranges", notebook, drawn }, busy, "sure");
      if (state().look.ranges.key === key) set_ranges(ranges);
    } finally {
      busy.end();
    }
  } catch (error) {
    given_up = key;
    if (!(error instanceof Halted) && !(error instanceof core.Stopped)) throw error;
  } finally {
    running = null;
  }
}

/**
 * Draws trials in parts: all of them, or those that were ready when Stop was pressed. `null` when they are not wanted any
 * more.
 */
async function draw(
  notebook: string,
  otherwise: Otherwise | null,
  trials: number,
  wanted: () => boolean,
): Promise<Float64Array | null> {
  const parts: Float64Array[] = [];
  let stopped = false;
  const busy = begin_busy(
    ["sure"],
    () => {
      stopped = true;
    },
    { quiet: true },
  );
  try {
    for (let from = 0; from < trials && !stopped; from += PART) {
      if (!wanted()) return null;
      const count = Math.min(PART, trials - from);
      parts.push(await beside({ do: "trials", notebook, otherwise, from, count }, busy, "sure"));
      busy.part(from + count, trials);
    }
  } finally {
    busy.end();
  }
  return joined(parts);
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

// The same cast read otherwise.

interface Read {
  notebook: string;
  otherwise: string;
  /** `null`: it was stopped. */
  view: OtherwiseView | null;
}

let read: Read | null = null;
let reading = false;

/** What the cast would have shown, read otherwise; `null` while it is being worked out. Then everything is shown again. */
export function read_otherwise(s: Readonly<State>): OtherwiseView | null {
  const otherwise = JSON.stringify(s.ui.otherwise);
  if (read?.notebook === s.notebook && read.otherwise === otherwise) return read.view;
  if (!reading) {
    reading = true;
    void read_now(s, otherwise).finally(() => {
      reading = false;
      show();
    });
  }
  return null;
}

async function read_now({ notebook, ui, look }: Readonly<State>, otherwise: string): Promise<void> {
  const wanted = (): boolean => {
    const now = state();
    return now.ui.panel === "otherwise" && now.notebook === notebook && JSON.stringify(now.ui.otherwise) === otherwise;
  };
  try {
    const drawn = await draw(notebook, ui.otherwise, look.ranges.fewer_trials, wanted);
    if (drawn === null) return;
    const busy = begin_busy(["sure"], null, { quiet: true });
    try {
      const ranges = core.known_ranges();
      const view = await beside({ do: "otherwise", notebook, otherwise: ui.otherwise, drawn, ranges }, busy, "sure");
      read = { notebook, otherwise, view };
    } finally {
      busy.end();
    }
  } catch (error) {
    read = { notebook, otherwise, view: null };
    if (!(error instanceof Halted) && !(error instanceof core.Stopped)) throw error;
  }
}
