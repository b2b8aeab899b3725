// The bench of a class: hand-ins dropped until their picture is painted, and a step of the wall.

import { readFileSync } from "node:fs";
import path from "node:path";
import { line, pair, spread } from "./bench_numbers.js";
import { Page } from "./browser.js";
import * as steps from "./steps.js";

const REDRAWS = 20;

/** Hand-ins of one class, each with a cast of its own and three questions tried, made in an empty page. */
async function hand_ins(browser, table, count) {
  const context = await browser.inner.createBrowserContext();
  const page = new Page(await context.newPage());
  const folder = process.env.MEASURED;
  const module = readFileSync(path.join(folder, "core_bg.wasm")).toString("base64");
  const glue = readFileSync(path.join(folder, "core.js"), "utf8");
  await page.inner.addScriptTag({ type: "module", content: `${glue}\nglobalThis.core = { initSync, new_notebook, act, hand_in_file };` });
  const files = await page.run(
    (module, table, count) => {
      core.initSync({ module: Uint8Array.from(atob(module), (sign) => sign.charCodeAt(0)) });
      return Array.from({ length: count }, (_, at) => {
        const warmer = (cell) => (Number(cell) + 0.1 * (at % 40)).toFixed(1);
        const own = table.replace(/^(\d+\.\d)\t(\S+)\t(\S+)/gm, (_, depth, down, up) => `${depth}\t${warmer(down)}\t${warmer(up)}`);
        let notebook = core.new_notebook(`K${String(at).padStart(3, "0")}`);
        const act = (action) => {
          notebook = core.act(notebook, action);
        };
        act({ do: "paste", text: own });
        act({ do: "set_group", text: String(at % 40) });
        act({ do: "set_seat", text: String(at) });
        act({ do: "no_layers" });
        for (const question of [0, 1, 2]) {
          for (const [field, text] of [["temp", "12"], ["unit", "c"], ["drop", "3.2"], ["rate", "5"]]) act({ do: "set_field", question, field, text });
          act({ do: "check", question });
        }
        return core.hand_in_file(notebook);
      });
    },
    module,
    table,
    count,
  );
  await context.close();
  return files.map((text, at) => ({ name: `${at}.json`, base64: Buffer.from(text).toString("base64"), text }));
}

/** Hand-ins dropped on Class until the class picture is painted, and the wall redrawn, at 4x. */
export async function classes({ browser, tab, table, written_down }) {
  const all = await hand_ins(browser, table, 200);
  console.log(`\n6. A class, in the page (aims: 40 hand-ins into the picture in at most a second at 4x, a wall redraw under 16 ms)`);
  for (const [count, throttle, turns] of [
    [40, 1, 5],
    [40, 4, 5],
    [200, 4, 2],
  ]) {
    const files = all.slice(0, count);
    const found = { whole: [], json: [], class_take: [], class_draw: [] };
    for (let turn = 0; turn < turns; turn += 1) {
      const context = await browser.inner.createBrowserContext();
      const page = await tab(context);
      await page.go();
      await steps.go(page, "class");
      await page.inner.emulateCPUThrottling(throttle);
      const one = await page.run(async (files) => {
        const json_from = performance.now();
        for (const { text } of files) JSON.parse(JSON.stringify(JSON.parse(text)));
        const json = performance.now() - json_from;
        const dropped = new DataTransfer();
        for (const { name, text } of files) dropped.items.add(new File([text], name));
        bench.take();
        const from = performance.now();
        const drawn = new Promise((done) => {
          bench.after_call = (name) => name === "class_draw" && bench.calls.some(([called]) => called === "class_take") && bench.after_frame(done);
        });
        dispatchEvent(new DragEvent("drop", { dataTransfer: dropped, bubbles: true, cancelable: true }));
        return { whole: (await drawn) - from, json, calls: bench.take() };
      }, files);
      const of = (name) => one.calls.filter(([called]) => called === name).reduce((sum, call) => sum + call[1], 0);
      found.whole.push(one.whole);
      found.json.push(one.json);
      found.class_take.push(of("class_take"));
      found.class_draw.push(of("class_draw"));
      if (turn === turns - 1) await walls(page, count, throttle, written_down);
      await context.close();
    }
    pair(`${count} hand-ins, dropped to painted, ${throttle}x`, found.whole, "JSON of the same files read, written and read", found.json);
    for (const name of ["class_take", "class_draw"]) line(`of it: ${name}`, spread(found[name], " ms"));
  }
}

/** Steps of the wall, in turns with the same picture by hand on the same canvas. */
async function walls(page, count, throttle, written_down) {
  await page.run(() => document.querySelector('#class-panel [data-view="add"] [data-part="to-list"]').click());
  await page.run(() => document.querySelector('#class-panel [data-part="wall"]').click());
  await page.until(() => document.getElementById("screen-class").classList.contains("on-wall"));
  const press = (key) =>
    page.run(async (key) => {
      bench.take();
      const took = await bench.in_frame(() => document.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true })));
      return { ...took, calls: bench.take().map(([name]) => name) };
    }, key);
  await press("ArrowLeft");
  await page.run(() => bench.record());
  await press("ArrowRight");
  const hand = written_down(await page.run(() => bench.stop()));
  await page.inner.evaluate(`bench.hand = ${hand.source}`);
  const ours = [];
  const theirs = [];
  for (let turn = 0; turn < REDRAWS; turn += 1) {
    await press("ArrowLeft");
    const drawn = await press("ArrowRight");
    if (!drawn.calls.includes("class_draw")) throw new Error("a step of the wall drew nothing");
    ours.push(drawn);
    theirs.push(await page.run(() => bench.in_frame(() => bench.hand(document.querySelector("#class-picture canvas")))));
  }
  const of = (list, name) => list.map((one) => one[name]);
  pair(`a wall redraw of ${count}, ${throttle}x: the frame`, of(ours, "frame"), `by hand (${hand.calls} calls): the same`, of(theirs, "frame"));
  line("our script alone", spread(of(ours, "script"), " ms"));
}
