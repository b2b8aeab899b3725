// View: theme, language, size of the text. They belong to this browser, not to a notebook.

import { by_id, set_text } from "./dom";
import { fill_words, first_language, set_language } from "./say";
import { on_show, type State, set_ui, show, state, type Theme, type View } from "./state";
import { read_setting, write_setting } from "./storage";

const THEMES: readonly Theme[] = ["day", "night", "sunlight", "projector"];
const SIZES = [80, 90, 100, 110, 125, 150, 175, 200] as const;

/** The settings kept from last time, else what the browser prefers. */
export function first_view(): View {
  const kept_theme = THEMES.find((one) => one === read_setting("theme"));
  const dark = matchMedia("(prefers-color-scheme: dark)").matches;
  const kept_lang = read_setting("lang");
  const lang = kept_lang === "en" || kept_lang === "es" ? kept_lang : first_language();
  const text_size = SIZES.find((one) => String(one) === read_setting("text_size")) ?? 100;
  return { theme: kept_theme ?? (dark ? "night" : "day"), lang, both: read_setting("both") === "true", text_size };
}

/** Puts theme, size and language on the page; called before the first drawing. */
export function apply_view(view: View): void {
  const root = document.documentElement;
  root.dataset.theme = view.theme;
  root.style.setProperty("--text-size", String(view.text_size / 100));
  stack_from(view.text_size);
  const words = `${view.lang} ${view.both}`;
  if (applied !== words) {
    root.lang = view.lang;
    set_language(view.lang, view.both);
    fill_words(document);
    applied = words;
  }
}

/** The languages that are on the page. */
let applied = "";

/** Widths of the style sheets at which the page stacks, as written. */
const WRITTEN_PX = /(\d+)px/g;
const as_written = new Map<CSSMediaRule, string>();

/** Larger words need the stacked page in wider windows, as the browser's own zoom does by itself. */
function stack_from(text_size: number): void {
  const times = text_size > 100 ? (text_size / 100) * 1.2 : 1;
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSMediaRule) || !/-width/.test(as_written.get(rule) ?? rule.media.mediaText)) continue;
      const written = as_written.get(rule) ?? rule.media.mediaText;
      as_written.set(rule, written);
      rule.media.mediaText = written.replace(WRITTEN_PX, (_, px: string) => `${Math.round(Number(px) * times)}px`);
    }
  }
}

/** Whether the page is stacked: on a phone, or because the words are large for this window. */
export function is_stacked(): boolean {
  const times = state().ui.text_size > 100 ? (state().ui.text_size / 100) * 1.2 : 1;
  return innerWidth <= Math.round(720 * times);
}

/** Wires the menu. */
export function mount_view_menu(): void {
  const menu = by_id("menu-view");
  menu.addEventListener("change", (event) => {
    const field = event.target as HTMLInputElement;
    const theme = THEMES.find((one) => one === field.value);
    if (field.name === "theme" && theme) change_view({ theme });
    if (field.name === "lang" && (field.value === "en" || field.value === "es")) change_view({ lang: field.value });
  });
  const both = by_id<HTMLInputElement>("view-both");
  both.addEventListener("change", () => change_view({ both: both.checked }));
  by_id("view-smaller").addEventListener("click", () => step(-1));
  by_id("view-larger").addEventListener("click", () => step(1));
  on_show(show_view_menu);
}

function step(by: number): void {
  const at = SIZES.indexOf(state().ui.text_size as (typeof SIZES)[number]);
  const text_size = SIZES[at + by];
  if (text_size) change_view({ text_size });
}

/** Changes theme, language or size of the text, and keeps the choice in this browser. */
export function change_view(to: Partial<View>): void {
  for (const [name, value] of Object.entries(to)) write_setting(name, String(value));
  apply_view({ ...state().ui, ...to });
  set_ui(to);
  show();
}

function show_view_menu(s: State): void {
  if (s.ui.menu !== "view") return;
  for (const field of by_id("menu-view").querySelectorAll<HTMLInputElement>("input[type=radio]")) {
    field.checked = field.value === (field.name === "theme" ? s.ui.theme : s.ui.lang);
    field.parentElement?.classList.toggle("on", field.checked);
  }
  by_id<HTMLInputElement>("view-both").checked = s.ui.both;
  set_text(by_id("view-size"), `${s.ui.text_size}\u00A0%`);
  by_id("view-smaller").toggleAttribute("disabled", s.ui.text_size === SIZES[0]);
  by_id("view-larger").toggleAttribute("disabled", s.ui.text_size === SIZES[SIZES.length - 1]);
}
