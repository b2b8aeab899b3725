// Long work as data: what the worker is asked and what it answers. The same few lines run in the worker and, where a
// browser gives none, in the page.

import type * as wasm from "../generated/core";
import type { Action, Look, Opened, PictureWords, Screen } from "../generated/core";

/** The calculation, in the page or in the worker. */
type Core = Pick<typeof wasm, "open_bytes" | "act" | "look_from" | "words" | "__wbg_reset_state">;

/** A notebook after some actions, how it looks, and the words of the picture on its screen. */
export interface Changed {
  notebook: string;
  look: Look;
  screen: Screen;
  words: PictureWords;
}

/**
 * What can be asked. `replay`: an action that fails is left out, the others still count. `first_row`: where Log's table
 * begins, in a very long cast.
 */
export type Job =
  | { do: "open"; bytes: Uint8Array }
  | { do: "change"; notebook: string; actions: readonly Action[]; replay: boolean; first_row: number }
  | { do: "words"; notebook: string; screen: Screen };

/** What each job gives. */
export interface Done {
  open: Opened;
  change: Changed;
  words: PictureWords;
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
      return core.words(job.notebook, job.screen);
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
      const look = core.look_from(notebook, job.first_row);
      const { screen } = look.place;
      return { notebook, look, screen, words: core.words(notebook, screen) };
    }
  }
}
