// The student's marks as real sliders laid over the picture: drag, arrow keys, or type in the panel.

import type { Action, Look, MarkKey, MarkName, Num, PlacementView, Said, SaidArg, Screen } from "../generated/core";
import { clone, set_attr, set_text, template } from "./dom";
import { num, say, t } from "./say";
import { dispatch, type State } from "./state";
import { is_stacked } from "./view_menu";

/** What one grip says and does. */
interface Handle {
  name: Said;
  spoken: Said;
  /** Word on the grip while it is unset. */
  word: string;
  depth_m: number | null;
  least_m: number;
  most_m: number;
  key(key: MarkKey): Action;
  drag(y_px: number, place: PlacementView): Action;
}

/** A press has to move this far before it drags, in CSS pixels. */
const STILL_PX = 3;

const MARKS: readonly MarkName[] = ["mixed", "thermocline", "deep"];

function word_of_mark(mark: MarkName): string {
  switch (mark) {
    case "mixed":
      return t("page-picture-grip-mixed");
    case "thermocline":
      return t("page-picture-grip-thermocline");
    case "deep":
      return t("page-picture-grip-deep");
  }
}

/** The grips of a screen by their id: those of the question's fields, else the three marks. */
function handles(look: Look, screen: Screen): Map<string, Handle> {
  const found = new Map<string, Handle>();
  for (const mark of look.profile.marks) {
    const name = mark.mark;
    if (!MARKS.includes(name)) continue;
    found.set(name, {
      name: mark.name,
      spoken: mark.spoken,
      word: word_of_mark(name),
      depth_m: mark.depth_m,
      least_m: mark.least_m,
      most_m: mark.most_m,
      key: (key) => ({ do: "key_mark", mark: name, key }),
      drag: (y_px, { surface_y_px, px_per_m }) => ({ do: "drag_mark", mark: name, y_px, surface_y_px, px_per_m }),
    });
  }
  const current = screen === "questions" ? look.questions.current : null;
  const question = look.place.question;
  for (const field of current?.parts.flatMap((part) => part.lines).flatMap((line) => line.fields) ?? []) {
    const grip = field.grip;
    if (grip === null) continue;
    found.set(field.id, {
      name: field.name,
      spoken: grip.spoken,
      word: say(grip.word),
      depth_m: grip.depth_m,
      least_m: grip.least_m,
      most_m: grip.most_m,
      key: (key) => ({ do: "key_field", question, field: field.id, key }),
      drag: (y_px, { surface_y_px, px_per_m }) => ({
        do: "drag_field",
        question,
        field: field.id,
        y_px,
        surface_y_px,
        px_per_m,
      }),
    });
  }
  return found;
}

/** The depth a grip's spoken value names, with the decimals it is shown with. A map deep inside a view is a `Map`. */
function depth_in(spoken: Said): Num | null {
  const args: unknown = spoken.args;
  const values: Iterable<SaidArg> = args instanceof Map ? args.values() : Object.values(spoken.args);
  for (const arg of values) if (arg.kind === "number") return arg;
  return null;
}

function text_on(handle: Handle, hollow: boolean, bare: boolean): string {
  const depth = hollow ? null : depth_in(handle.spoken);
  if (depth === null) return handle.word;
  return bare ? num(depth) : t("page-picture-depth", { depth: num(depth) });
}

function key_of(event: KeyboardEvent): MarkKey | null {
  switch (event.key) {
    case "ArrowUp":
      return event.shiftKey ? "mark_up" : "up";
    case "ArrowDown":
      return event.shiftKey ? "mark_down" : "down";
    case "PageUp":
      return "mark_up";
    case "PageDown":
      return "mark_down";
    case "Home":
      return "home";
    case "End":
      return "end";
    default:
      return null;
  }
}

interface Grip {
  el: HTMLElement;
  word: HTMLElement;
  lead: Element;
  handle: Handle;
}

/** Puts sliders into `layer` where the placement says, and lines to their true depths into `leads`. */
export function mount_grips(
  layer: HTMLElement,
  leads: Element,
  screen: Screen,
  draw: { now(): void; later(): void },
): { show(s: Readonly<State>, place: PlacementView, unit_px: number): void } {
  const grips = new Map<string, Grip>();
  let place: PlacementView | null = null;
  /** The grip that moves by pointer or by a held key: it is spoken when it stops. */
  let moving: string | null = null;

  function grip_of(event: Event): [string, Grip] | null {
    const el = event.target instanceof Element ? event.target.closest<HTMLElement>("[role=slider]") : null;
    const id = el?.dataset.grip;
    const grip = id === undefined ? undefined : grips.get(id);
    return id === undefined || grip === undefined ? null : [id, grip];
  }

  function speak(grip: Grip): void {
    const { el, handle } = grip;
    set_attr(el, "aria-label", say(handle.name));
    set_attr(el, "aria-valuemin", String(handle.least_m));
    set_attr(el, "aria-valuemax", String(handle.most_m));
    set_attr(el, "aria-valuenow", String(handle.depth_m ?? handle.least_m));
    set_attr(el, "aria-valuetext", say(handle.spoken));
  }

  function stop(id: string): void {
    if (moving !== id) return;
    moving = null;
    const grip = grips.get(id);
    if (grip !== undefined) speak(grip);
  }

  layer.addEventListener("keydown", (event) => {
    const at = grip_of(event);
    const key = event.altKey || event.ctrlKey || event.metaKey ? null : key_of(event);
    if (at === null || key === null) return;
    event.preventDefault();
    if (event.repeat) moving = at[0];
    dispatch(at[1].handle.key(key));
  });
  layer.addEventListener("keyup", (event) => {
    const at = grip_of(event);
    if (at !== null) stop(at[0]);
  });
  layer.addEventListener("focusout", (event) => {
    const at = grip_of(event);
    if (at !== null) stop(at[0]);
  });

  layer.addEventListener("pointerdown", (event) => {
    const at = grip_of(event);
    if (at === null || event.button !== 0 || place === null) return;
    const [id, grip] = at;
    const spot = place.grips.find((one) => one.id === id);
    if (spot === undefined) return;
    event.preventDefault();
    grip.el.focus({ preventScroll: true });
    grip.el.setPointerCapture(event.pointerId);
    const from_y = event.clientY;
    const grip_y_px = spot.true_y_px;
    let to_y = from_y;
    let frame = 0;
    const step = (): void => {
      frame = 0;
      if (place === null) return;
      dispatch(grip.handle.drag(grip_y_px + to_y - from_y, place));
      draw.now();
    };
    const move = (next: PointerEvent): void => {
      if (moving !== id && Math.abs(next.clientY - from_y) < STILL_PX) return;
      moving = id;
      to_y = next.clientY;
      if (frame === 0) frame = requestAnimationFrame(step);
    };
    const end = (): void => {
      grip.el.removeEventListener("pointermove", move);
      grip.el.removeEventListener("lostpointercapture", end);
      if (frame !== 0) {
        cancelAnimationFrame(frame);
        step();
      }
      stop(id);
      draw.later();
    };
    grip.el.addEventListener("pointermove", move);
    grip.el.addEventListener("lostpointercapture", end);
  });

  function make(id: string, handle: Handle): Grip {
    const el = clone(template("template-picture-grip"));
    const lead = clone_lead(leads);
    el.dataset.grip = id;
    layer.append(el);
    return { el, word: el.querySelector("b") ?? el, lead, handle };
  }

  return {
    show(s, next, unit_px) {
      place = next;
      const known = handles(s.look, screen);
      const here = next.grips.filter((spot) => known.has(spot.id));
      for (const [id, grip] of grips) {
        if (here.some((spot) => spot.id === id)) continue;
        grip.el.remove();
        grip.lead.remove();
        grips.delete(id);
      }
      const bare = is_stacked();
      const [left, right] = next.yours_x_px;
      const wider = bare ? 2 * unit_px : 0;
      for (const spot of here) {
        const handle = known.get(spot.id);
        if (handle === undefined) continue;
        const grip = grips.get(spot.id) ?? make(spot.id, handle);
        grip.handle = handle;
        grips.set(spot.id, grip);
        const text = text_on(handle, spot.hollow, bare);
        set_text(grip.word, text);
        grip.el.classList.toggle("unset", spot.hollow);
        grip.el.style.setProperty("left", `${left - wider}px`);
        grip.el.style.setProperty("width", `${right - left + 2 * wider}px`);
        grip.el.style.setProperty("top", `${spot.y_px}px`);
        draw_lead(grip.lead, spot, left, bare ? unit_px : 7 * unit_px, unit_px);
        if (moving !== spot.id) speak(grip);
      }
      // Tab order is top to bottom; a grip in hand is never moved in the document, so that it keeps the focus.
      const order = [...here].sort((a, b) => a.y_px - b.y_px).map((spot) => grips.get(spot.id)?.el);
      if (!layer.contains(document.activeElement) && order.some((el, index) => el !== layer.children[index])) {
        for (const el of order) if (el !== undefined) layer.append(el);
      }
    },
  };
}

function clone_lead(leads: Element): Element {
  const lead = document.createElementNS("http://www.w3.org/2000/svg", "g");
  for (const name of ["line", "circle"]) lead.append(document.createElementNS("http://www.w3.org/2000/svg", name));
  leads.append(lead);
  return lead;
}

/** Violet line and dot from a parted grip to its true depth on the cable. */
function draw_lead(
  lead: Element,
  spot: { y_px: number; true_y_px: number; hollow: boolean },
  left: number,
  reach: number,
  unit_px: number,
): void {
  const [line, dot] = lead.children;
  const parted = !spot.hollow && Math.abs(spot.y_px - spot.true_y_px) > 0.6 * unit_px;
  lead.classList.toggle("parted", parted);
  if (!parted || line === undefined || dot === undefined) return;
  const set = (el: Element, of: Record<string, number>): void => {
    for (const [name, value] of Object.entries(of)) el.setAttribute(name, String(value));
  };
  set(line, { x1: left - reach, y1: spot.true_y_px, x2: left + unit_px, y2: spot.y_px });
  set(dot, { cx: left - reach, cy: spot.true_y_px, r: 2.6 * unit_px });
}
