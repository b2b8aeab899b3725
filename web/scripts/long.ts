// Long work beside the page: a file, a large table, a large notebook. It runs in a worker made from a block of the page, so
// that the page goes on living and a press on Stop ends it; what there was before is not touched.

import type { Action } from "../generated/core";
import { type Busy, begin_busy, type Step } from "./busy";
import * as core from "./core";
import { painted } from "./dom";
import { wasm_module, worker_script } from "./inlined";
import type { Asked, Changed, Done, Job, Told } from "./jobs";

/** Notebooks, tables and files from these sizes on go to the worker: on a slow laptop they take a third of a second. */
const LONG_NOTEBOOK = 150_000;
const LONG_TABLE = 12_000;
const LONG_FILE = 30_000;
/** A worker that says nothing for this long after its start will not come, milliseconds. */
const PATIENCE_MS = 20_000;

/** The person pressed Stop. */
export class Halted extends Error {}

let worker: Promise<Worker | null> | null = null;
let running: { worker: Worker; halt: () => void } | null = null;
let turn: Promise<unknown> = Promise.resolve();
/** How often Stop has been pressed: what was asked before that is not begun. */
let halts = 0;

/** Whether an action brings a table with it. */
export function brings_table(one: Action): one is Extract<Action, { do: "paste" | "take_file" | "take_example" }> {
  return one.do === "paste" || one.do === "take_file" || one.do === "take_example";
}

/** Whether these actions on this notebook are long work. */
export function is_long(notebook: string, actions: readonly Action[] = []): boolean {
  return notebook.length > LONG_NOTEBOOK || actions.some((one) => brings_table(one) && one.text.length > LONG_TABLE);
}

/** Whether a file, or a text that may be one, is long work. */
export function is_long_file(bytes: number): boolean {
  return bytes > LONG_FILE;
}

/** The notebook after some actions: at once, or beside the page when that is long work. */
export async function changed(
  notebook: string,
  actions: readonly Action[],
  { first = "opening", replay = false }: { first?: Step; replay?: boolean } = {},
): Promise<Changed> {
  const job: Job = { do: "change", notebook, actions, replay, first_row: 0, ranges: core.known_ranges() };
  if (!is_long(notebook, actions)) return core.here(job);
  const busy = begin_busy([first, "calculating"], halt);
  try {
    return await beside(job, busy, first);
  } finally {
    busy.end();
  }
}

/** Does a job beside the page; the line `busy` moves on as parts of it are done. */
export function beside<J extends Job>(job: J, busy: Busy, first: Step): Promise<Done[J["do"]]> {
  const asked_at = halts;
  const mine = turn.then(async () => {
    if (halts !== asked_at) throw new Halted();
    busy.step(first);
    worker ??= start_worker();
    const there = await worker;
    if (halts !== asked_at) throw new Halted();
    if (there) return ask(there, job, busy);
    // No worker in this browser: the page says what it does before it stands still.
    await painted();
    return core.here(job);
  });
  turn = mine.catch(() => {});
  return mine as Promise<Done[J["do"]]>;
}

/** Ends what is running and whatever waits behind it. */
export function halt(): void {
  halts += 1;
  const now = running;
  running = null;
  if (!now) return;
  now.worker.terminate();
  worker = null;
  now.halt();
}

function ask(there: Worker, job: Job, busy: Busy): Promise<Done[Job["do"]]> {
  return new Promise((done, failed) => {
    const end = () => {
      running = null;
      there.onmessage = null;
      there.onerror = null;
    };
    running = { worker: there, halt: () => failed(new Halted()) };
    there.onmessage = ({ data }: MessageEvent<Told>) => {
      if (data.kind === "calculating") return busy.step("calculating");
      if (data.kind === "ready") return;
      end();
      if (data.kind === "done") done(data.result);
      else if (data.kind === "stopped") failed(core.stopped(`${job.do}: ${data.what}`));
      else failed(new Error(data.what));
    };
    there.onerror = (event) => {
      end();
      there.terminate();
      worker = null;
      failed(core.stopped(`${job.do}: ${event.message}`));
    };
    there.postMessage({ job } satisfies Asked);
  });
}

/** A worker that is ready, or `null` where the browser gives none. */
async function start_worker(): Promise<Worker | null> {
  try {
    const url = URL.createObjectURL(new Blob([await worker_script()], { type: "text/javascript" }));
    const made = new Worker(url);
    const ready = await new Promise<boolean>((answer) => {
      made.onmessage = ({ data }: MessageEvent<Told>) => answer(data.kind === "ready");
      made.onerror = (event) => {
        event.preventDefault();
        answer(false);
      };
      setTimeout(() => answer(false), PATIENCE_MS);
      void wasm_module().then((module) => made.postMessage({ module } satisfies Asked));
    });
    URL.revokeObjectURL(url);
    if (ready) return made;
    made.terminate();
  } catch {
    // said by doing the work in the page
  }
  return null;
}
