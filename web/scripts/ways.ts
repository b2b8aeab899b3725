// The buttons a view brings along: their words, what pressing them does, and what a waiting one waits for.

import type { Action, Way } from "../generated/core";
import { list, set_attr, set_text, template } from "./dom";
import { say, say_into } from "./say";
import { dispatch, idle } from "./state";

const shown = new WeakMap<Element, readonly Way[]>();

const same_as = (way: Way) => (other: Way) => JSON.stringify(other.action) === JSON.stringify(way.action);

/**
 * Fills `parent` with the buttons of a view. A button that waits stays in the tab order and does nothing; `waits` is the
 * line under the buttons that says what opens it. `press` comes before the action and may take it over by returning true.
 */
export function show_ways(
  parent: Element,
  ways: readonly Way[],
  options: { waits?: HTMLElement; small?: boolean; press?: (action: Action) => boolean } = {},
): void {
  const { waits, small, press } = options;
  if (!shown.has(parent)) {
    parent.addEventListener("click", (event) => {
      const button = event.target instanceof Element ? event.target.closest("button") : null;
      const index = button === null ? -1 : [...parent.querySelectorAll("button")].indexOf(button);
      const way = shown.get(parent)?.[index];
      if (way?.waits === null) act(way);
      // What it waits for may have been done, and is still being worked in beside the page.
      else if (way !== undefined) void idle().then(() => act(shown.get(parent)?.find(same_as(way))));
    });
    const act = (way: Way | undefined): void => {
      if (way === undefined || way.waits !== null || press?.(way.action)) return;
      dispatch(way.action);
    };
  }
  shown.set(parent, ways);
  list(parent, template("template-way"), ways, (button, way) => {
    button.className = `${way.main ? "go" : "do"}${small ? " small" : ""}`;
    set_text(button, say(way.label));
    set_attr(button, "aria-disabled", way.waits === null ? null : "true");
    set_attr(button, "aria-describedby", way.waits === null || waits === undefined ? null : waits.id);
  });
  if (waits === undefined) return;
  const waiting = ways.find((way) => way.waits !== null)?.waits ?? null;
  if (waiting === null) waits.replaceChildren();
  else say_into(waits, waiting);
}
