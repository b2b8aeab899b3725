// A verdict: the ring is the range, the dot is the student's mark, and always the words beside them.

import type { Sign, VerdictView } from "../generated/core";
import { part, set_attr, template, toggle } from "./dom";
import { say_into } from "./say";

/** Where ring and dot stand in the sign's 20 by 20: [ring x, y, radius], [dot x, y, radius]. */
const SIGNS: Record<Sign, { ring: readonly [number, number, number]; dot: readonly [number, number, number] | null }> =
  {
    inside: { ring: [10, 10, 7.2], dot: [10, 10, 3.1] },
    close: { ring: [10, 10, 7.2], dot: [10, 2.9, 3.1] },
    outside: { ring: [6.8, 13, 5.5], dot: [15.6, 4.2, 3.1] },
    bare: { ring: [10, 10, 7.2], dot: null },
  };

/** Shows a verdict in `el`, or hides it when there is none. */
export function show_verdict(el: HTMLElement, verdict: VerdictView | null): void {
  toggle(el, verdict !== null);
  if (verdict === null) return;
  if (!el.firstElementChild) el.append(document.importNode(template("template-verdict-parts").content, true));
  el.dataset.sign = verdict.sign;
  const { ring, dot } = SIGNS[verdict.sign];
  place(el.querySelector(".ring"), ring);
  place(el.querySelector(".dot"), dot ?? [0, 0, 0]);
  say_into(part(el, "said"), verdict.said);
}

function place(circle: Element | null, [x, y, radius]: readonly [number, number, number]): void {
  if (circle === null) return;
  set_attr(circle, "cx", String(x));
  set_attr(circle, "cy", String(y));
  set_attr(circle, "r", String(radius));
}
