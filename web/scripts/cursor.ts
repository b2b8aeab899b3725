// The reading cursor: one stop in the tab order over a picture; the arrow keys walk the readings, and the table follows.

import type { PlacementView, ReadingView } from "../generated/core";
import { set_attr, toggle } from "./dom";
import { say, t } from "./say";
import { type State, set_ui, state } from "./state";

/** How near a press must be to a reading to take it, in CSS pixels. */
const NEAR_PX = 22;

/**
 * Which reading a key leads to: an index, `null` to leave the readings, `undefined` when the key is not for them. One stop
 * a depth: readings of the same row are told in one sentence.
 */
function reading_after(
  key: string,
  cursor: number | null,
  readings: readonly { row: number }[],
): number | null | undefined {
  if (key === "Escape") return cursor === null ? undefined : null;
  if (readings.length === 0) return undefined;
  const first_of = (row: number | undefined): number => readings.findIndex((one) => one.row === row);
  const row = cursor === null ? undefined : readings[cursor]?.row;
  switch (key) {
    case "ArrowDown": {
      const below =
        row === undefined ? 0 : readings.findIndex((one, index) => index > (cursor ?? -1) && one.row !== row);
      return below < 0 ? first_of(row) : below;
    }
    case "ArrowUp":
      return row === undefined
        ? first_of(readings.at(-1)?.row)
        : first_of(readings[Math.max(0, first_of(row) - 1)]?.row);
    case "Home":
      return 0;
    case "End":
      return first_of(readings.at(-1)?.row);
    default:
      return undefined;
  }
}

/** The reading under the cursor, if it still stands on one. */
export function reading_in_hand(s: Readonly<State>): ReadingView | null {
  return s.ui.cursor === null ? null : (s.look.readings[s.ui.cursor] ?? null);
}

/** Makes `walk`, an element over the picture, the cursor's tab stop. */
export function mount_cursor(
  walk: HTMLElement,
  placement: () => PlacementView | null,
): { show(s: Readonly<State>): void } {
  walk.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const s = state();
    const next = reading_after(event.key, s.ui.cursor, s.look.readings);
    if (next === undefined) return;
    event.preventDefault();
    set_ui({ cursor: next });
  });
  walk.addEventListener("click", (event) => {
    const place = placement();
    if (place === null) return;
    const box = walk.getBoundingClientRect();
    const near = nearest(place.points_px, event.clientX - box.left, event.clientY - box.top);
    if (near !== null) set_ui({ cursor: near });
  });
  return {
    show(s) {
      const reading = reading_in_hand(s);
      const count = s.look.readings.length;
      toggle(walk, count > 0);
      set_attr(walk, "aria-label", t("page-picture-walk"));
      set_attr(walk, "aria-valuemin", "0");
      set_attr(walk, "aria-valuemax", String(count));
      set_attr(walk, "aria-valuenow", String(reading === null ? 0 : (s.ui.cursor ?? 0) + 1));
      set_attr(walk, "aria-valuetext", reading === null ? t("page-picture-no-reading") : say(reading.said));
    },
  };
}

function nearest(points_px: readonly (readonly [number, number])[], x: number, y: number): number | null {
  let best: number | null = null;
  let best_px = NEAR_PX;
  points_px.forEach(([px, py], index) => {
    const away = Math.hypot(px - x, py - y);
    if (away < best_px) [best, best_px] = [index, away];
  });
  return best;
}
