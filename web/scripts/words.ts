// The words of the trade, each with a small picture and in both languages. The pictures show no reading of anybody: one sketch
// of a layered lake, with the part lit that the word names.

import { close_menu } from "./bar";
import { by_id, list, part, set_attr, set_text, template } from "./dom";
import { language, other_language, t, t_other } from "./say";

/** A box of the sketch (48 wide, 60 high, depth down): x, y, width, height. */
type Lit = readonly [number, number, number, number];

interface Word {
  term: string;
  means: string;
  lit: Lit;
}

const WORDS: readonly Word[] = [
  { term: "word-cast", means: "word-cast-means", lit: [8, 2, 3, 56] },
  { term: "word-mark", means: "word-mark-means", lit: [5, 22, 9, 3] },
  { term: "word-profile", means: "word-profile-means", lit: [14, 2, 32, 56] },
  { term: "word-step", means: "word-step-means", lit: [14, 26, 32, 6] },
  { term: "word-gradient", means: "word-gradient-means", lit: [20, 26, 18, 6] },
  { term: "word-epilimnion", means: "word-epilimnion-means", lit: [0, 2, 48, 20] },
  { term: "word-metalimnion", means: "word-metalimnion-means", lit: [0, 22, 48, 14] },
  { term: "word-hypolimnion", means: "word-hypolimnion-means", lit: [0, 36, 48, 22] },
  { term: "word-mixed-layer", means: "word-mixed-layer-means", lit: [34, 2, 10, 20] },
  { term: "word-thermocline", means: "word-thermocline-means", lit: [0, 28, 48, 2] },
  { term: "word-range", means: "word-range-means", lit: [0, 24, 48, 10] },
  { term: "word-density", means: "word-density-means", lit: [14, 44, 12, 14] },
  { term: "word-stratified", means: "word-stratified-means", lit: [0, 21, 48, 2] },
  { term: "word-overturn", means: "word-overturn-means", lit: [0, 2, 48, 56] },
];

/** Wires the ways in and the way back. */
export function mount_words(): void {
  const page = by_id<HTMLDialogElement>("words");
  let from: HTMLElement | null = null;
  for (const way of document.querySelectorAll<HTMLElement>("[data-words]")) {
    way.addEventListener("click", () => {
      // From a menu, which closes, the focus goes back to its button.
      from = way.closest(".menu") === null ? way : by_id("bar-help");
      close_menu();
      fill();
      page.showModal();
      by_id("words-title").focus();
      page.scrollTo(0, 0);
    });
  }
  by_id("words-back").addEventListener("click", () => page.close());
  page.addEventListener("close", () => from?.focus());
}

function fill(): void {
  const other = other_language(language());
  list(by_id("words-list"), template("template-word"), WORDS, (el, word) => {
    set_text(part(el, "term"), t(word.term));
    set_text(part(el, "means"), t(word.means));
    for (const [name, id] of [
      ["other-term", word.term],
      ["other-means", word.means],
    ] as const) {
      const there = part(el, name);
      there.lang = other;
      set_text(there, t_other(id));
    }
    const lit = el.querySelector(".lit");
    const names = ["x", "y", "width", "height"] as const;
    if (lit !== null) for (const [at, name] of names.entries()) set_attr(lit, name, String(word.lit[at]));
  });
}
