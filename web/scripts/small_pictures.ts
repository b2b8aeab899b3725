// Small pictures of a question: drawn by the core on canvases as wide as their lines, each once a size, a theme and a curve.

import type { SmallPictures } from "../generated/core";
import { draw_small } from "./core";
import { part, set_attr, toggle } from "./dom";
import { load_faces, root_px_of } from "./picture";
import { say, say_into } from "./say";
import { state } from "./state";

interface Drawn {
  canvas: HTMLCanvasElement;
  pictures: SmallPictures;
  index: number;
  painted: string;
}

const drawn = new Map<HTMLCanvasElement, Drawn>();
const sizes = new ResizeObserver((entries) => {
  for (const { target } of entries) paint(drawn.get(target as HTMLCanvasElement));
});

/** Shows one of the pictures on a canvas, and again whenever its size or the theme changes. */
export function show_small(canvas: HTMLCanvasElement, pictures: SmallPictures, index: number): void {
  const known = drawn.get(canvas);
  if (known === undefined) {
    const one = { canvas, pictures, index, painted: "" };
    drawn.set(canvas, one);
    sizes.observe(canvas);
    void load_faces().then(() => paint(one));
  } else {
    known.pictures = pictures;
    known.index = index;
    void load_faces().then(() => paint(known));
  }
  for (const other of drawn.keys()) if (!other.isConnected && other !== canvas) forget(other);
}

/** Shows the first of the pictures by itself, with its letter; nothing where there is none. */
export function show_one(el: HTMLElement, pictures: SmallPictures | null): void {
  const first = pictures?.options[0];
  toggle(el, first !== undefined);
  if (pictures === null || first === undefined) return;
  set_attr(el, "aria-label", `${say(first.label)}: ${say(first.alt)}`);
  say_into(part(el, "label"), first.label);
  show_small(part<HTMLCanvasElement>(el, "canvas"), pictures, 0);
}

function forget(canvas: HTMLCanvasElement): void {
  sizes.unobserve(canvas);
  drawn.delete(canvas);
}

function paint(one: Drawn | undefined): void {
  const option = one?.pictures.options[one.index];
  const [width_px, height_px] = [one?.canvas.clientWidth ?? 0, one?.canvas.clientHeight ?? 0];
  if (one === undefined || option === undefined || width_px < 1 || height_px < 1) return;
  const { own, depth_m, low_c, high_c } = one.pictures;
  const { ui } = state();
  const request = {
    curve: option.curve,
    own,
    depth_m,
    low_c,
    high_c,
    theme: ui.theme,
    width_px,
    height_px,
    root_px: root_px_of(ui),
    scale: Math.max(2, Math.ceil(devicePixelRatio)),
  };
  const key = JSON.stringify(request);
  if (key === one.painted) return;
  one.painted = key;
  draw_small(one.canvas, request);
}
