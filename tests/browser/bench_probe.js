// What the bench puts into a page before its own script runs: clocks around the calculation and around frames, and a list
// of what was drawn. The page itself has no part for measuring.

/** Runs in the page, before anything of it. Leaves `bench` there. */
export function probe() {
  const clock = performance.now.bind(performance);
  const later = setTimeout.bind(globalThis);
  const bench = {
    /** Each call into the calculation since the last `take`: [name, ms]. */
    calls: [],
    /** Told after each call into the calculation. */
    after_call: () => {},
    /** Told after each frame in which the page drew a picture: its script and the whole frame on the main thread, ms. */
    on_redraw: () => {},
    take() {
      const taken = bench.calls;
      bench.calls = [];
      return taken;
    },
    /** From an action to what is shown of it, in the calls since the last `take`, ms. */
    analysis: () => bench.calls.reduce((sum, [name, ms]) => sum + (["act", "look", "step"].includes(name) ? ms : 0), 0),
  };
  globalThis.bench = bench;

  /** The exports of the module, each with a clock around it. */
  const timed = (exports) => {
    const wrapped = { ...exports };
    for (const name of ["act", "look", "step", "words", "draw", "class_take", "class_look", "class_draw"]) {
      wrapped[name] = (...args) => {
        const from = clock();
        try {
          return exports[name](...args);
        } finally {
          bench.calls.push([name, clock() - from]);
          bench.after_call(name);
        }
      };
    }
    return wrapped;
  };
  const instantiate = WebAssembly.instantiate.bind(WebAssembly);
  WebAssembly.instantiate = async (module, imports) => {
    const instance = await instantiate(module, imports);
    return { instance: { exports: timed(instance.exports) }, module };
  };

  /** Runs `tell` when the frame being made is done on the main thread: a message comes after style, layout and paint. */
  bench.after_frame = (tell) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      tell(clock());
    };
    port2.postMessage(null);
  };

  const frame = requestAnimationFrame.bind(globalThis);
  /** A step in the next frame, measured as the page's own redraws are. */
  bench.in_frame = (step) =>
    new Promise((resolve) => {
      frame((now) => {
        const from = clock();
        step(now);
        const script = clock() - from;
        bench.after_frame((at) => resolve({ script, frame: at - from }));
      });
    });
  globalThis.requestAnimationFrame = (step) =>
    frame((now) => {
      const before = bench.calls.length;
      const from = clock();
      step(now);
      const script = clock() - from;
      const calls = bench.calls.slice(before);
      if (calls.some(([name]) => name === "draw")) {
        // Whoever listens now: one who comes between drawing and painting waits for the next.
        const tell = bench.on_redraw;
        bench.after_frame((at) => tell({ script, frame: at - from, calls, at }));
      }
    });

  /** The page's next redraw; nothing when none comes. */
  bench.next_redraw = () =>
    new Promise((resolve) => {
      bench.on_redraw = resolve;
      later(() => resolve(null), 10_000);
    });

  /** Pastes a table as soon as the page has its first notebook, and gives the ms from navigation to its picture. */
  bench.paste_at_once = (table) =>
    new Promise((resolve) => {
      bench.after_call = (name) => {
        if (name !== "look") return;
        bench.after_call = () => {};
        later(() => {
          bench.take();
          bench.paste(table);
          bench.on_redraw = ({ at }) => {
            const analysis = bench.analysis();
            if (analysis > 0) resolve({ ms: at, analysis });
          };
        }, 0);
      };
    });

  /** The paste of a person, as an event. */
  bench.paste = (table) => {
    const data = new DataTransfer();
    data.setData("text/plain", table);
    const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
    document.body.dispatchEvent(event);
  };

  /** Lists everything that is called or set on a canvas until `stop`: [kind, name, arguments]. */
  bench.record = () => {
    const list = [];
    const put_back = [];
    const listen = (prototype, names) => {
      for (const name of names) {
        const was = Object.getOwnPropertyDescriptor(prototype, name);
        if (typeof was.value === "function") {
          const listened = function (...args) {
            list.push(["call", name, args]);
            return was.value.apply(this, args);
          };
          Object.defineProperty(prototype, name, { ...was, value: listened });
        } else if (was.set) {
          const listened = function (value) {
            list.push([prototype === HTMLCanvasElement.prototype ? "size" : "set", name, [value]]);
            was.set.call(this, value);
          };
          Object.defineProperty(prototype, name, { ...was, set: listened });
        } else continue;
        put_back.push([prototype, name, was]);
      }
    };
    const drawing = CanvasRenderingContext2D.prototype;
    const path_of_text = globalThis.Path2D;
    put_back.push([globalThis, "Path2D", Object.getOwnPropertyDescriptor(globalThis, "Path2D")]);
    globalThis.Path2D = class extends path_of_text {
      constructor(text) {
        super(text);
        this.path = text;
      }
    };
    listen(drawing, Object.getOwnPropertyNames(drawing).filter((name) => name !== "constructor"));
    listen(HTMLCanvasElement.prototype, ["width", "height"]);
    bench.stop = () => {
      for (const [of, name, was] of put_back) Object.defineProperty(of, name, was);
      return list;
    };
  };
}

/** Calls that draw nothing. */
const NOT_DRAWN = ["measureText", "getTransform", "getImageData", "isPointInPath"];

/**
 * A recorded drawing as a person would write it down: the same calls one after the other, without setting anew what is set
 * already. The text of a function of a canvas.
 */
export function by_hand(list) {
  const set = new Map();
  const lines = [];
  for (const [kind, name, args] of list) {
    if (NOT_DRAWN.includes(name)) continue;
    const text = args.map((arg) => (arg?.path === undefined ? JSON.stringify(arg) : `new Path2D(${JSON.stringify(arg.path)})`));
    if (kind === "call") {
      if (["save", "restore", "reset"].includes(name)) set.clear();
      lines.push(`c.${name}(${text.join(", ")});`);
    } else if (kind === "size") {
      set.clear();
      lines.push(`canvas.${name} = ${text[0]};`);
    } else if (set.get(name) !== text[0]) {
      set.set(name, text[0]);
      lines.push(`c.${name} = ${text[0]};`);
    }
  }
  return { calls: lines.length, source: `(canvas) => { const c = canvas.getContext("2d");\n${lines.join("\n")}\n}` };
}
