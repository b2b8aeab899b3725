// Long work as data: what the worker is asked and what it answers. The same few lines run in the worker and, where a
// browser gives none, in the page.

import type * as wasm from "../generated/core";
import type { Action, Look, Opened, Otherwise, OtherwiseView, PictureWords, Screen, WhyView } from "../generated/core";

/** The calculation, in the page or in the worker. */
type Core = Pick<
  typeof wasm,
  "open_bytes" | "act" | "class_why" | "look_from" | "words" | "trials" | "ranges" | "otherwise" | "__wbg_reset_state"
>;

/** A notebook after some actions, how it looks, and the words of the picture on its screen. */
export interface Changed {
  notebook: string;
  look: Look;
  screen: Screen;
  words: PictureWords;
}

/**
 * What can be asked. `replay`: an action that fails is left out, the others still count. `first_row`: where Log's table
 * begins, in a very long cast. `ranges`: what the trials came to, if they have been made. Trials are drawn in parts, of the
 * cast or of the same cast read otherwise; `drawn`: all the parts, one after the other.
 */
export type Job =
  | { do: "open"; bytes: Uint8Array }
  | {
      do: "change";
      notebook: string;
      actions: readonly Action[];
      replay: boolean;
      first_row: number;
      ranges: string | null;
    }
  | { do: "words"; notebook: string; screen: Screen; ranges: string | null }
  | { do: "trials"; notebook: string; otherwise: Otherwise | null; from: number; count: number }
  | { do: "ranges"; notebook: string; drawn: Float64Array }
  | { do: "why"; book: string; one: string; other: string | null; minutes: string; later: boolean }
  | { do: "otherwise"; notebook: string; otherwise: Otherwise; drawn: Float64Array; ranges: string | null };

/** What each job gives. */
export interface Done {
  open: Opened;
  change: Changed;
  words: PictureWords;
  trials: Float64Array;
  ranges: string;
  why: WhyView | null;
  otherwise: OtherwiseView;
}

/** What the page asks of the worker. */
export type Asked = { module: WebAssembly.Module } | { job: Job };

/** What the worker answers: that it is there, that one part is done and the next one begun, the end. */
export type Told =
  | { kind: "ready" }
  | { kind: "calculating" }
  | { kind: "done"; result: Done[Job["do"]] }
  | { kind: "stopped"; what: string }
  | { kind: "failed"; what: string };

/** Does a job; `calculating` is called between the actions and the layers. */
export function do_job(core: Core, job: Job, calculating: () => void): Done[Job["do"]] {
  switch (job.do) {
    case "open":
      return core.open_bytes(job.bytes);
    case "words":
      return core.words(job.notebook, job.screen, job.ranges);
    case "trials":
      return core.trials(job.notebook, job.otherwise, job.from, job.count);
    case "ranges":
      return core.ranges(job.notebook, job.drawn);
    case "why":
      return core.class_why(job.book, job.one, job.other, job.minutes, job.later).why;
    case "otherwise":
      return core.otherwise(job.notebook, job.otherwise, job.drawn, job.ranges);
    case "change": {
      let { notebook } = job;
      for (const action of job.actions) {
        try {
          notebook = core.act(notebook, action);
        } catch (error) {
          if (!job.replay) throw error;
          if (error instanceof WebAssembly.RuntimeError) core.__wbg_reset_state();
        }
      }
      calculating();
      const look = core.look_from(notebook, job.first_row, job.ranges);
      const { screen } = look.place;
      return { notebook, look, screen, words: core.words(notebook, screen, job.ranges) };
    }
  }
}
