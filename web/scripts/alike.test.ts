// The calculation as WebAssembly comes to the same bits as natively: what `crates/lesson/tests/alike.rs` keeps in files is
// computed again by the module of the page. CORE: its file, ROOT: the project's folder.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import * as core from "../generated/core";

const ROOT = process.env.ROOT ?? "..";
const KEPT = path.join(ROOT, "crates/lesson/tests/alike");

/** As many trials as the native test draws, in other parts. */
const PARTS = [1, 7, 992];

const kept = readdirSync(KEPT).filter((name) => name.endsWith(".json"));
assert.ok(kept.length > 2, "nothing is kept to compare with");
core.initSync({ module: readFileSync(process.env.CORE ?? "") });

for (const name of kept) {
  test(`natively and here alike: ${name}`, () => {
    const table = readFileSync(path.join(ROOT, "static-data/casts", name.replace(".json", ".csv")), "utf8");
    const notebook = core.act(core.new_notebook("KTZR"), { do: "take_example", text: table });
    const drawn: number[] = [];
    let from = 0;
    for (const count of PARTS) {
      drawn.push(...core.trials(notebook, null, from, count));
      from += count;
    }
    const otherwise = { marks: "every_metre", ways: "up", wait: "short", digits: "halves", cable: "rough" } as const;
    const other = core.otherwise(notebook, otherwise, core.trials(notebook, otherwise, 0, 100), null);
    const ranges: unknown = JSON.parse(core.ranges(notebook, Float64Array.from(drawn)));
    assert.deepStrictEqual({ ranges, other }, JSON.parse(readFileSync(path.join(KEPT, name), "utf8")));
  });
}
