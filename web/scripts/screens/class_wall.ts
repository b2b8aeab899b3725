// The class picture, beside the list or on the wall: what was read, where the groups marked, the layers, the middle. On the
// wall the arrow keys go step by step, and one key makes it dark.

import type { ClassPart } from "../../generated/core";
import { class_book, set_class } from "../class_state";
import { class_draw } from "../core";
import { by_id, set_text, toggle } from "../dom";
import { decimal_sign, say, speak, t, t_lines } from "../say";
import { has_state, type State, state } from "../state";
import { apply_view } from "../view_menu";
import { why_pair, why_told } from "./class_why";
import { years_picture } from "./class_years";

/** A step of the wall: a picture, and with "why" the curves of those that were compared. */
export type WallStep = ClassPart | "why";

/** What the room can see, step by step: the guesses where somebody guessed, and last why two differ, once that was asked. */
export function wall_steps(): WallStep[] {
  const { guessed, marked } = class_book().view;
  const steps: WallStep[] = marked ? ["curves", "marks", "layers", "middle"] : ["curves", "layers", "middle"];
  if (guessed) steps.unshift("guesses");
  if (why_told() !== null) steps.push("why");
  return steps;
}

function step_now(): WallStep {
  const { part, why } = class_book();
  return why ? "why" : part;
}

/** Keys that make the wall dark and bright again. */
const DARK = new Set(["b", "B", "."]);

/** Wires the picture and the wall. */
export function mount_wall(): void {
  // Its place is known only when head and font have settled.
  new ResizeObserver(() => {
    if (has_state() && state().look.place.screen === "class") draw(state());
  }).observe(by_id("class-picture"));
  by_id("class-wall-back").addEventListener("click", () => step(-1));
  by_id("class-wall-next").addEventListener("click", () => step(1));
  by_id("class-wall-leave").addEventListener("click", leave_wall);
  document.addEventListener("keydown", (event) => {
    if (state().look.place.screen !== "class" || !class_book().wall) return;
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const does = key_does(event.key);
    if (does === null) return;
    event.preventDefault();
    does();
  });
  document.addEventListener("fullscreenchange", () => {
    if (document.fullscreenElement === null && class_book().wall) leave_wall();
  });
}

function key_does(key: string): (() => void) | null {
  if (key === "ArrowRight" || key === "PageDown") return () => step(1);
  if (key === "ArrowLeft" || key === "PageUp") return () => step(-1);
  if (key === "Escape") return leave_wall;
  // Among curves a letter is a group; the point makes dark all the same.
  const lit = light(key);
  if (lit !== null) return lit;
  if (DARK.has(key)) return () => set_class({ blank: !class_book().blank });
  return null;
}

/** Once somebody went a step, the keys are known. */
let keys_told = false;

function step(by: number): void {
  const steps = wall_steps();
  const at = steps.indexOf(step_now()) + by;
  const next = steps[Math.max(0, Math.min(steps.length - 1, at))];
  if (next === undefined) return;
  const why = next === "why";
  keys_told = true;
  set_class({ part: why ? "curves" : next, why, against: why ? (why_told()?.one ?? null) : lit_before, blank: false });
  speak(said_of(next));
}

/** The cast that was in hand before the wall. */
let lit_before: string | null = null;

/** Lights the group of this letter among the others, and lets it go again. */
function light(letter: string): (() => void) | null {
  const { view, against, part, why } = class_book();
  const named = (name: string): boolean => name.toUpperCase() === letter.toUpperCase();
  const cast = view.casts.find(({ name }) => named(name));
  if (cast === undefined || why || part !== "curves") return null;
  return () => set_class({ against: against === cast.cast_id ? null : cast.cast_id });
}

/** Shows the class to the room: large, in the projector's colours, alone on the screen where the browser allows it. */
export function to_wall(): void {
  lit_before = class_book().against;
  set_class({ wall: true, why: false, blank: false });
  apply_view({ ...state().ui, theme: "projector" });
  void document.documentElement.requestFullscreen?.().catch(() => {});
  by_id("class-wall-said").focus();
}

function leave_wall(): void {
  set_class({ wall: false, why: false, blank: false, against: lit_before });
  apply_view(state().ui);
  if (document.fullscreenElement !== null) void document.exitFullscreen();
  by_id("class-panel").querySelector<HTMLElement>("[data-part=wall]")?.focus();
}

/** What stands over a step. */
export function said_of(step: WallStep): string {
  switch (step) {
    case "guesses":
      return t("class-wall-guesses");
    case "why": {
      const told = why_told();
      if (told === null) return "";
      return t("class-wall-why", { pair: say(told.view.title), said: say(told.view.short ?? told.view.title) });
    }
    case "curves":
      return t("class-wall-curves");
    case "marks":
      return t("class-wall-marks");
    case "layers":
      return say(class_book().view.sentence);
    case "middle":
      return t("class-wall-middle");
  }
}

/** Draws the picture as large as its place is, once a change. */
export function show_wall(s: Readonly<State>): void {
  const { wall, part, blank } = class_book();
  by_id("screen-class").classList.toggle("on-wall", wall);
  toggle(by_id("class-panel"), !wall);
  toggle(by_id("class-wall-said"), wall);
  toggle(by_id("class-wall-foot"), wall);
  toggle(by_id("class-wall-keys"), !keys_told);
  by_id("class-wall-key").classList.toggle("unseen", part !== "layers");
  toggle(by_id("class-blank"), blank);
  set_text(by_id("class-wall-said"), said_of(step_now()));
  draw(s);
}

let drawn = "";
let drawn_from = "";

function draw(s: Readonly<State>): void {
  const { panel, wall, why } = class_book();
  const years = panel === "years";
  // The pair that is compared is lit.
  const pair = (panel === "why" && !wall) || why ? why_pair() : null;
  const against = pair === null ? class_book().against : pair.one;
  const beside = pair?.other ?? null;
  const { drawing, empty } = years
    ? years_picture()
    : { drawing: class_book().drawing, empty: class_book().view.casts.length === 0 };
  const part = years ? "layers" : pair === null ? class_book().part : "curves";
  const figure = by_id("class-picture");
  toggle(by_id("class-nothing"), empty);
  if (empty) set_text(by_id("class-nothing"), t(years ? "class-nothing-years" : "class-nothing"));
  const canvas = figure.querySelector("canvas");
  if (canvas === null) return;
  const { width, height } = figure.getBoundingClientRect();
  const root_px = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const theme = wall ? "projector" : s.ui.theme;
  const looks = [width, height, root_px, theme, part, against, beside, s.ui.lang, wall, years].join();
  if (width < 1 || (drawn === looks && drawn_from === drawing)) return;
  drawn = looks;
  drawn_from = drawing;
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  class_draw(canvas, drawing, {
    of: part,
    against,
    beside,
    theme,
    width_px: width,
    height_px: height,
    root_px,
    scale: wall ? devicePixelRatio : Math.max(2, devicePixelRatio),
    words: {
      decimal: decimal_sign(),
      depth: t_lines("class-picture-depth"),
      temperature: t("class-picture-temperature"),
      none: t_lines("class-picture-none"),
      none_short: t("class-picture-none-short"),
      few: t_lines("class-picture-few"),
      fahrenheit: t_lines("class-picture-fahrenheit"),
      middle: t("class-picture-middle"),
      cannot_tell: t_lines("class-picture-cannot-tell"),
      cannot_tell_short: t("class-picture-cannot-tell-short"),
    },
  });
}
