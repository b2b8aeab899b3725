// The picture of a screen: a canvas the core draws on, real sliders over it, the reading cursor, and the cover that
// slides off. Where things stand comes from the core's placement; nothing is computed here from a depth.

import type { PictureRequest, PictureText, PictureWords, PlacementView, Said, Screen } from "../generated/core";
import { begin_busy, show_busy_now } from "./busy";
import { draw, know_words, known_ranges, knows_words, Stopped, svg, words } from "./core";
import { mount_cursor } from "./cursor";
import { clone, painted as dom_painted, set_attr, set_text, template } from "./dom";
import { mount_grips } from "./grips";
import { beside, Halted, is_long } from "./long";
import { decimal_sign, language, say, t } from "./say";
import { idle, type State, state } from "./state";
import { is_stacked } from "./view_menu";

/** A mounted picture. */
export interface Picture {
  /** Draws what the state shows, once a frame at most. */
  show(s: Readonly<State>): void;
  /** Where things stood in the last drawing. */
  placement(): PlacementView | null;
  /** The picture as an SVG document with its fonts inside. */
  as_svg(): string;
}

/** Name of the event on the figure after each drawing; its detail is the placement. */
export const PLACED = "placed";

/** The faces the pictures ask a canvas for: each weight of the sans has a family of its own. */
const FACES = [
  '16px "Plex Sans"',
  '16px "Plex Sans 500"',
  '16px "Plex Sans 600"',
  '16px "Plex Sans 700"',
  'italic 16px "Source Serif"',
  '16px "Source Serif 600"',
];

/** A drawing that takes this long is announced before the next one, milliseconds. */
const SLOW_MS = 250;

/** The narrow layout starts under so many units of a sixteenth of the root size. */
const NARROW_UNDER_U = 760;

let faces: Promise<unknown> | null = null;
let faces_ready = false;

/** A canvas does not wait for its fonts: the first drawing does. */
export function load_faces(): Promise<unknown> {
  faces ??= Promise.all(FACES.map((face) => document.fonts.load(face))).catch(() => undefined);
  return faces.then(() => {
    faces_ready = true;
  });
}

/** Fills `figure` with the picture of `screen`. */
export function mount_picture(figure: HTMLElement, screen: Screen): Picture {
  figure.append(document.importNode(template("template-picture-parts").content, true));
  const canvas = figure.querySelector("canvas");
  const walk = figure.querySelector<HTMLElement>(".walk");
  const leads = figure.querySelector(".leads");
  const layer = figure.querySelector<HTMLElement>(".grips");
  const caption = figure.querySelector("figcaption");
  if (canvas === null || walk === null || leads === null || layer === null || caption === null) {
    throw new Error("index.html: template picture-parts is incomplete");
  }

  let shown: Readonly<State> | null = null;
  let placement: PlacementView | null = null;
  let painted = "";
  let frame = 0;
  let covers: Covers | null = null;
  /** As the browser last laid the figure out: reading it while drawing would lay the page out once more. */
  let size: FigureSize = { width_px: 0, height_px: 0 };
  const cursor = mount_cursor(walk, () => placement);
  const grips = mount_grips(layer, leads, screen, { now: () => paint(true), later: soon });

  function soon(): void {
    if (frame === 0) frame = requestAnimationFrame(() => paint());
  }

  /** `live`: a mark is being dragged, which changes no word of the picture. */
  function paint(live = false): void {
    cancelAnimationFrame(frame);
    frame = 0;
    if (shown === null || !faces_ready) return;
    if (is_long(shown.notebook)) void paint_long();
    else paint_now(shown, live);
  }

  /** A large notebook: its words come from beside the page, and before a slow drawing the page says what it does. */
  async function paint_long(): Promise<void> {
    if (waits) return;
    waits = true;
    await idle();
    const busy = begin_busy(["drawing"], null);
    try {
      for (let s = shown; s !== null && is_shown(s); s = shown) {
        if (!knows_words(s.notebook, screen)) {
          const found = await beside(
            { do: "words", notebook: s.notebook, screen, ranges: known_ranges() },
            busy,
            "drawing",
          );
          know_words({ notebook: s.notebook, screen, words: found });
        } else if (!is_painted(s) && !said) {
          said = true;
          if (slow) {
            show_busy_now();
            await dom_painted();
          }
        } else {
          const began = performance.now();
          const drawn = !is_painted(s);
          paint_now(s, false);
          if (drawn) slow = performance.now() - began > SLOW_MS;
          break;
        }
      }
    } catch (error) {
      if (!(error instanceof Stopped) && !(error instanceof Halted)) throw error;
    } finally {
      waits = false;
      said = false;
      busy.end();
    }
  }
  let waits = false;
  let said = false;
  /** The last drawing of a large notebook was slow; the first one is taken to be. */
  let slow = true;

  function is_shown(s: Readonly<State>): boolean {
    return s.look.place.screen === screen && size.width_px >= 1;
  }

  function is_painted(s: Readonly<State>): boolean {
    return is_same(s) && JSON.stringify(request_for(s, screen, size)) === painted;
  }

  function paint_now(s: Readonly<State>, live: boolean): void {
    const { width_px, height_px } = size;
    if (width_px < 1 || height_px < 1) return;
    const request = request_for(s, screen, size, live);
    const key = JSON.stringify(request);
    if (key !== painted || !is_same(s)) {
      painted = key;
      last = { notebook: s.notebook, ranges: known_ranges() };
      const next = draw(canvas as HTMLCanvasElement, s.notebook, request);
      if (next === null) return; // it stopped, which has been said: the last drawing stays
      placement = next;
    }
    if (placement === null) return;
    canvas?.style.setProperty("width", `${width_px}px`);
    canvas?.style.setProperty("height", `${height_px}px`);
    grips.show(s, placement, request.root_px / 16);
    slide_covers(s, placement, request.words);
    tell_place(placement);
  }
  let last: { notebook: string; ranges: string | null } = { notebook: "", ranges: null };

  function is_same(s: Readonly<State>): boolean {
    return s.notebook === last.notebook && known_ranges() === last.ranges;
  }

  function tell_place(place: PlacementView): void {
    const around = figure.parentElement;
    around?.style.setProperty("--surface-y", `${place.surface_y_px}px`);
    around?.style.setProperty("--px-per-m", `${place.px_per_m}px`);
    figure.dispatchEvent(new CustomEvent(PLACED, { detail: place }));
  }

  /** What was covered in the last drawing and is not now slides off sideways; the picture under it is drawn already. */
  function slide_covers(s: Readonly<State>, place: PlacementView, text: PictureText): void {
    const now = covers_of(s, screen);
    const before = covers;
    covers = now;
    const opened =
      before !== null && before.of === now.of && ((before.rules && !now.rules) || (before.strip && !now.strip));
    if (!opened || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
    if (before.rules && !now.rules) slide(place, place.middle_x_px, covered_lines(text));
    if (before.strip && !now.strip) slide(place, place.strip_x_px, covered_lines(text));
  }

  function slide(place: PlacementView, [left, right]: readonly [number, number], lines: readonly string[]): void {
    if (right - left < 1) return;
    const flap = clone(template("template-picture-flap"));
    flap.style.setProperty("left", `${left}px`);
    flap.style.setProperty("width", `${right - left}px`);
    flap.style.setProperty("top", `${place.surface_y_px}px`);
    flap.style.setProperty("height", `${place.max_depth_m * place.px_per_m}px`);
    const sheet = flap.firstElementChild as HTMLElement;
    sheet.append(...lines.map((line) => Object.assign(document.createElement("span"), { textContent: line })));
    figure.append(flap);
    requestAnimationFrame(() => flap.classList.add("off"));
    const done = (): void => flap.remove();
    sheet.addEventListener("transitionend", done);
    setTimeout(done, 600);
  }

  new ResizeObserver(([entry]) => {
    const { width = 0, height = 0 } = entry?.contentRect ?? {};
    size = { width_px: Math.round(width), height_px: Math.round(height) };
    soon();
  }).observe(figure);
  addEventListener("resize", soon);
  document.addEventListener("visibilitychange", soon);
  void load_faces().then(soon);

  return {
    show(s) {
      shown = s;
      set_text(caption, name_of(screen));
      set_attr(canvas, "aria-label", say(s.look.alt));
      cursor.show(s);
      soon();
    },
    placement: () => placement,
    as_svg() {
      const s = state();
      const request = request_for(s, screen, size);
      return with_fonts(svg(s.notebook, request, say(s.look.alt)));
    },
  };
}

function name_of(screen: Screen): string {
  switch (screen) {
    case "log":
      return t("page-picture-name-log");
    case "profile":
    case "report":
    case "class":
      return t("page-picture-name-profile");
    case "questions":
      return t("page-picture-name-questions");
  }
}

/** Width and height in CSS pixels. */
interface FigureSize {
  width_px: number;
  height_px: number;
}

/** The root font size, kept until the window, the theme or the size of the text changes. */
let root: { of: string; px: number } | null = null;
addEventListener("resize", () => {
  root = null;
});

export function root_px_of({ theme, text_size }: Readonly<State>["ui"]): number {
  const of = `${theme} ${text_size}`;
  if (root?.of !== of) root = { of, px: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) };
  return root.px;
}

function request_for(s: Readonly<State>, screen: Screen, size: FigureSize, live = false): PictureRequest {
  const root_px = root_px_of(s.ui);
  const narrow = size.width_px / (root_px / 16) < NARROW_UNDER_U;
  return {
    screen,
    theme: s.ui.theme,
    ...size,
    root_px,
    scale: Math.max(2, Math.ceil(devicePixelRatio)),
    layout: screen === "log" ? "log" : is_stacked() ? "phone" : narrow ? "narrow" : "wide",
    cursor: s.ui.cursor,
    rule: screen === "profile" && s.ui.panel === "rules" ? s.ui.rule : null,
    by_hand: screen === "log" && s.ui.log_door === "by_hand",
    otherwise: screen === "profile" && s.ui.panel === "otherwise" ? s.ui.otherwise : null,
    words: words_of(s, screen, live),
  };
}

/** The printed page's picture, CSS pixels at a root of 14: as wide as the page's lines. */
const PAGE_PX = { width_px: 680, height_px: 316 };

/** The picture of the printed page, as an SVG document. `alone`: with the fonts inside, for a file of its own. */
export function page_svg(s: Readonly<State>, alone = false): string {
  const request: PictureRequest = {
    screen: "report",
    theme: "day",
    ...PAGE_PX,
    root_px: 14,
    scale: 4,
    layout: "wide",
    cursor: null,
    rule: null,
    by_hand: false,
    otherwise: null,
    words: words_of(s, "report", false),
  };
  const made = svg(s.notebook, request, say(s.look.alt));
  return alone ? with_fonts(made) : made;
}

/** What lay under a cover, for one notebook on one screen. */
interface Covers {
  of: string;
  rules: boolean;
  strip: boolean;
}

function covers_of(s: Readonly<State>, screen: Screen): Covers {
  const open = s.look.profile.table.some((row) => row.per_metre !== null);
  return { of: s.look.code, rules: screen === "profile" && !s.look.profile.checked, strip: !open };
}

let words_for: { of: string; screen: Screen; lang: string; text: PictureText } | null = null;

/** The picture's words in the reader's language; kept for as long as notebook, screen and language stay the same. */
function words_of(s: Readonly<State>, screen: Screen, live: boolean): PictureText {
  const lang = language();
  const of = `${s.notebook} ${known_ranges()}`;
  const same = words_for?.screen === screen && words_for.lang === lang;
  if (words_for === null || !same || (words_for.of !== of && !live)) {
    const text = { ...render(words(s.notebook, screen)), decimal: decimal_sign() } as unknown as PictureText;
    words_for = { of, screen, lang, text };
  }
  return words_for.text;
}

type Rendered = string | Rendered[] | { [name: string]: Rendered };

/** Every message of the picture's words rendered, name by name. */
function render(of: PictureWords): { [name: string]: Rendered } {
  const one = (value: unknown): Rendered => {
    if (Array.isArray(value)) return value.map(one);
    if (typeof value !== "object" || value === null) return String(value ?? "");
    if ("id" in value && "args" in value) return say(value as Said);
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, one(inner)]));
  };
  return one(of) as { [name: string]: Rendered };
}

/** "covered until you check", as the picture writes it: one line each. */
function covered_lines(text: PictureText): string[] {
  const { covered } = text as { covered?: unknown };
  return Array.isArray(covered) ? covered.map(String) : [];
}

/** The document with the page's own fonts inside (the sans, and the serif's italic): one opened elsewhere cannot see them. */
function with_fonts(document_text: string): string {
  const rules = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .filter(is_face)
    .filter((face) => family_of(face) === "Plex Sans" || /italic/.test(face.style.getPropertyValue("font-style")))
    .map((face) => face.cssText);
  const head = document_text.indexOf(">", document_text.indexOf("<svg")) + 1;
  return `${document_text.slice(0, head)}<style>${rules.join("")}</style>${document_text.slice(head)}`;
}

function is_face(rule: CSSRule): rule is CSSFontFaceRule {
  return rule instanceof CSSFontFaceRule;
}

function family_of(face: CSSFontFaceRule): string {
  return face.style.getPropertyValue("font-family").replaceAll(/["']/g, "");
}
