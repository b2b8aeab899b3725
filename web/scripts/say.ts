// Messages into text and nodes. All words for people stand in static-data/messages; numbers are formatted here, once.

import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import type { Num, Said, SaidArg } from "../generated/core";
import { set_attr } from "./dom";
import { messages } from "./inlined";

/** Languages of the page. */
export type Lang = "en" | "es";

/** A sign of the private-use area in place of "<" in arguments, so that an argument can never make a mark. */
const OPENER = "\uE000";

/** A language, as the page writes it. */
interface Tongue {
  lang: Lang;
  /** The region of the reader (decimal sign, digits) comes from the browser's list. */
  locale: string;
  bundle: FluentBundle | null;
  formats: Map<number, Intl.NumberFormat>;
}

let mine: Tongue = { lang: "en", locale: "en", bundle: null, formats: new Map() };
/** The language that stands beside it, where the reader wants both. */
let beside: Tongue | null = null;
let count_format = new Intl.NumberFormat("en");

function tongue(lang: Lang): Tongue {
  const locale = navigator.languages.find((one) => one.split("-")[0] === lang) ?? lang;
  const bundle = new FluentBundle([locale, lang], { useIsolating: false });
  bundle.addResource(new FluentResource(messages(lang)));
  return { lang, locale, bundle, formats: new Map() };
}

/** Chooses the language; `both`: the other one stands beneath what is marked `data-both`. */
export function set_language(next: Lang, both = false): void {
  mine = tongue(next);
  beside = both ? tongue(other_language(next)) : null;
  count_format = new Intl.NumberFormat(mine.locale);
}

/** The language that is not this one. */
export function other_language(lang: Lang): Lang {
  return lang === "en" ? "es" : "en";
}

/** The language in use. */
export function language(): Lang {
  return mine.lang;
}

/** The first language of the browser's list that the page speaks. */
export function first_language(): Lang {
  const known = navigator.languages.map((one) => one.split("-")[0]).find((one) => one === "en" || one === "es");
  return known === "es" ? "es" : "en";
}

/** A number as the reader writes it: region's digits and decimal sign, a real minus, no grouping. */
export function num(n: Num, by: Tongue = mine): string {
  let format = by.formats.get(n.decimals);
  if (!format) {
    format = new Intl.NumberFormat(by.locale, {
      minimumFractionDigits: n.decimals,
      maximumFractionDigits: n.decimals,
      useGrouping: false,
      signDisplay: "negative",
    });
    by.formats.set(n.decimals, format);
  }
  return format.format(n.value).replace("-", "\u2212");
}

/** The reader's decimal sign. */
export function decimal_sign(): string {
  const parts = new Intl.NumberFormat(mine.locale).formatToParts(1.5);
  return parts.find((one) => one.type === "decimal")?.value ?? ".";
}

/** A time of day, "14:02". */
export function time(at: Date): string {
  return at.toLocaleTimeString(mine.locale, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
}

/** A message as plain text. */
export function say(said: Said): string {
  return plain(raw(said));
}

/** Words of the page itself, as plain text. */
export function t(id: string, args: Record<string, string | number> = {}): string {
  return plain(own(id, args));
}

/** A message as nodes: `<b>`, `<mine>` and `<cell>` become elements, everything else is text. */
export function say_into(el: Element, said: Said): void {
  nodes_into(el, raw(said), beside && el.hasAttribute("data-both") ? raw(said, beside) : null);
}

/** Words of the page itself, as nodes. */
export function t_into(el: Element, id: string, args: Record<string, string | number> = {}): void {
  nodes_into(el, own(id, args), beside && el.hasAttribute("data-both") ? own(id, args, beside) : null);
}

/** Words of the page in the other language. */
export function t_other(id: string): string {
  return plain(own(id, {}, beside ?? tongue(other_language(mine.lang))));
}

/** A digit, and the point after it, of a written number: not of a name such as "A6.1". */
const POINT = /(?<![A-Za-z\d.])(\d+)\.(?=\d)/g;

/** Words of the page itself line by line, still marked, for [`line_into`]; numbers in them get the reader's decimal sign. */
export function t_lines(id: string): string[] {
  return own(id, {}).replace(POINT, `$1${decimal_sign()}`).split("\n");
}

/** One line of [`t_lines`] as nodes. */
export function line_into(el: Element, line: string): void {
  nodes_into(el, line);
}

/** Fills every `data-say` (text), `data-say-label` (aria-label) and `data-say-placeholder` under `root`, templates too. */
export function fill_words(root: ParentNode): void {
  for (const el of root.querySelectorAll("[data-say]")) t_into(el, el.getAttribute("data-say") ?? "");
  for (const el of root.querySelectorAll("[data-say-label]")) {
    set_attr(el, "aria-label", t(el.getAttribute("data-say-label") ?? ""));
  }
  for (const el of root.querySelectorAll("[data-say-placeholder]")) {
    set_attr(el, "placeholder", t(el.getAttribute("data-say-placeholder") ?? ""));
  }
  for (const el of root.querySelectorAll("template")) fill_words(el.content);
}

function own(id: string, args: Record<string, string | number>, by: Tongue = mine): string {
  const safe: Record<string, FluentVariable> = {};
  for (const [name, value] of Object.entries(args)) safe[name] = typeof value === "string" ? guard(value) : value;
  return format(id, safe, by);
}

function raw(said: Said, by: Tongue = mine): string {
  const args: Record<string, FluentVariable> = {};
  for (const [name, arg] of Object.entries(said.args)) args[name] = argument(arg, by);
  return format(said.id, args, by);
}

function argument(arg: SaidArg, by: Tongue): FluentVariable {
  switch (arg.kind) {
    case "number":
      return num(arg, by);
    case "count":
      return arg.count;
    case "text":
      return guard(arg.text);
    case "message":
      return raw(arg.said, by);
  }
}

function guard(text: string): string {
  return text.replaceAll("<", OPENER);
}

function format(id: string, args: Record<string, FluentVariable>, { bundle }: Tongue): string {
  const pattern = bundle?.getMessage(id)?.value;
  if (!bundle || !pattern) return id;
  return bundle.formatPattern(pattern, args, []);
}

const MARK = /<(\/?)(b|mine|cell)>/g;

function plain(marked: string): string {
  return marked.replace(MARK, "").replaceAll(OPENER, "<");
}

const shown = new WeakMap<Element, string>();

function nodes_into(el: Element, marked: string, other: string | null = null): void {
  const all = other === null ? marked : `${marked}\n${other}`;
  if (shown.get(el) === all && el.hasChildNodes()) return;
  shown.set(el, all);
  const made = nodes_of(marked);
  if (other !== null && beside !== null) {
    const under = document.createElement("span");
    under.className = "other-language";
    under.lang = beside.lang;
    under.append(...nodes_of(other));
    made.push(under);
  }
  el.replaceChildren(...made);
}

function nodes_of(marked: string): (Node | string)[] {
  const made: (Node | string)[] = [];
  let inside: Element | null = null;
  let from = 0;
  const add = (text: string) => {
    const clean = text.replaceAll(OPENER, "<");
    if (!clean) return;
    if (inside) inside.append(clean);
    else made.push(clean);
  };
  for (const mark of marked.matchAll(MARK)) {
    add(marked.slice(from, mark.index));
    from = mark.index + mark[0].length;
    if (mark[1]) inside = null;
    else {
      inside = element_of(mark[2] ?? "b");
      made.push(inside);
    }
  }
  add(marked.slice(from));
  return made;
}

function element_of(mark: string): Element {
  const el = document.createElement(mark === "b" ? "b" : mark === "mine" ? "em" : "span");
  if (mark !== "b") el.className = mark;
  return el;
}

/** Count as the reader writes it, for lines made without a message. */
export function count(n: number): string {
  return count_format.format(n);
}

/** Says something once and politely to those who listen to the page. */
export function speak(text: string): void {
  const spoken = document.getElementById("spoken");
  if (!spoken) return;
  // The same words twice are spoken twice.
  spoken.textContent = spoken.textContent === text ? `${text}\u00A0` : text;
}
