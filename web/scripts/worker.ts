// The worker: the same calculation beside the page. It keeps nothing between jobs, so the page may end it at any moment.

import start, * as wasm from "../generated/core";
import { type Asked, do_job, type Told } from "./jobs";

let started: Promise<unknown> = Promise.resolve();

function tell(told: Told): void {
  self.postMessage(told);
}

self.onmessage = async ({ data }: MessageEvent<Asked>) => {
  try {
    if ("module" in data) {
      started = start({ module_or_path: data.module });
      await started;
      tell({ kind: "ready" });
      return;
    }
    await started;
    tell({ kind: "done", result: do_job(wasm, data.job, () => tell({ kind: "calculating" })) });
  } catch (error) {
    const what = error instanceof Error ? `${error.message}\n${error.stack ?? ""}` : String(error);
    if (!(error instanceof WebAssembly.RuntimeError)) return tell({ kind: "failed", what });
    wasm.__wbg_reset_state();
    tell({ kind: "stopped", what });
  }
};
