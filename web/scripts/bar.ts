// The bar: the screens as marks on a cable, whose work this is, whether it is safe, and the three menus that hang under it.

import type { Screen } from "../generated/core";
import { by_id, set_attr, set_text, toggle } from "./dom";
import { t, time } from "./say";
import { dispatch, on_show, type State, set_ui, state, type Ui } from "./state";

type Menu = NonNullable<Ui["menu"]>;

const MENUS: readonly { menu: Menu; button: string; el: string }[] = [
  { menu: "notebooks", button: "bar-water", el: "menu-notebooks" },
  { menu: "view", button: "bar-view", el: "menu-view" },
  { menu: "help", button: "bar-help", el: "menu-help" },
];

const SCREENS: readonly Screen[] = ["log", "profile", "questions", "report", "class"];

/** Wires the bar. */
export function mount_bar(): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>(".steps a")) {
    link.addEventListener("click", (event) => {
      event.preventDefault();
      const screen = SCREENS.find((one) => one === link.dataset.go);
      if (screen) go(screen);
    });
  }
  for (const { menu, button } of MENUS) {
    by_id(button).addEventListener("click", () => set_ui({ menu: state().ui.menu === menu ? null : menu }));
  }
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && state().ui.menu !== null) {
      event.preventDefault();
      close_menu();
    }
  });
  document.addEventListener("pointerdown", (event) => {
    const open = MENUS.find((one) => one.menu === state().ui.menu);
    if (!open || !(event.target instanceof Node)) return;
    if (!by_id(open.el).contains(event.target) && !by_id(open.button).contains(event.target)) set_ui({ menu: null });
  });
  // The focus leaves a menu: it closes behind it.
  document.addEventListener("focusin", (event) => {
    const open = MENUS.find((one) => one.menu === state().ui.menu);
    if (!open || !(event.target instanceof Node)) return;
    if (!by_id(open.el).contains(event.target) && event.target !== by_id(open.button)) set_ui({ menu: null });
  });
  on_show(show_bar);
}

/** Goes to a screen; in Questions to the question in hand. */
export function go(screen: Screen): void {
  if (state().ui.menu !== null) set_ui({ menu: null });
  dispatch({ do: "go", screen, question: null });
}

/** Closes the open menu and gives the focus back to its word in the bar. */
export function close_menu(): void {
  const open = MENUS.find((one) => one.menu === state().ui.menu);
  set_ui({ menu: null });
  if (open) by_id(open.button).focus();
}

/** The first thing to press in a menu (of a choice the one that is on), or the menu itself where there is text to read. */
function enter(menu: HTMLElement): void {
  const all = menu.tabIndex === 0 ? [] : [...menu.querySelectorAll<HTMLElement>("button, input:checked")];
  (all.find((el) => el.offsetParent !== null) ?? menu).focus();
}

let shown_screen: Screen | null = null;
let shown_menu: Menu | null = null;

function show_bar(s: State): void {
  const screen = s.look.place.screen;
  for (const one of SCREENS) toggle(by_id(`screen-${one}`), one === screen);
  for (const link of document.querySelectorAll<HTMLElement>(".steps a")) {
    set_attr(link, "aria-current", link.dataset.go === screen ? "page" : null);
  }
  set_text(by_id("bar-who"), who(s));
  document.title = `${t(title_of(screen))} · Layercast`;
  const kept = s.stored.where === "device";
  toggle(by_id("bar-kept"), kept && s.writable && s.stored.at !== null && !s.look.empty);
  if (s.stored.at) set_text(by_id("bar-kept"), t("page-bar-kept", { time: time(s.stored.at) }));
  toggle(by_id("bar-not-kept"), !kept);
  for (const { menu, button, el } of MENUS) {
    const open = s.ui.menu === menu;
    toggle(by_id(el), open);
    set_attr(by_id(button), "aria-expanded", String(open));
    by_id(button).classList.toggle("open", open);
    // What is in the menu is shown in this same turn, after the bar.
    if (open && shown_menu !== menu) queueMicrotask(() => enter(by_id(el)));
  }
  shown_menu = s.ui.menu;
  if (shown_screen !== null && shown_screen !== screen) arrive(screen);
  shown_screen = screen;
}

/** After a change of screen the focus goes to its panel, unless it still stands on something that is there. */
function arrive(screen: Screen): void {
  scrollTo(0, 0);
  const at = document.activeElement;
  if (at instanceof HTMLElement && at !== document.body && at.offsetParent !== null) return;
  by_id(`screen-${screen}`).querySelector<HTMLElement>("[data-panel]")?.focus();
}

function who(s: State): string {
  if (s.look.empty && !s.look.group) return t("page-bar-nothing");
  const names = [s.look.water, s.look.group && t("page-bar-group", { group: s.look.group })].filter(Boolean);
  return names.length > 0 ? names.join(" · ") : s.look.code;
}

function title_of(
  screen: Screen,
): "page-bar-log" | "page-bar-profile" | "page-bar-questions" | "page-bar-report" | "page-bar-class" {
  switch (screen) {
    case "log":
      return "page-bar-log";
    case "profile":
      return "page-bar-profile";
    case "questions":
      return "page-bar-questions";
    case "report":
      return "page-bar-report";
    case "class":
      return "page-bar-class";
  }
}
