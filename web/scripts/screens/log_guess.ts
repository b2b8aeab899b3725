// The guess before the first reading: five points, typed or placed by touching the picture. The first reading seals it.

import type { GuessField, GuessRow, PlacementView } from "../../generated/core";
import { by_id, focus_seen, list, part, set_attr, set_value, template, toggle } from "../dom";
import { t } from "../say";
import { dispatch, type State, set_ui, state } from "../state";

/** Wires the door. `placement` says where things stand in the picture of Log. */
export function mount_log_guess(figure: HTMLElement, placement: () => PlacementView | null): void {
  by_id("log-to-guess").addEventListener("click", () => {
    set_ui({ log_door: "guess" });
    by_id("guess-title").focus();
  });
  by_id("guess-done").addEventListener("click", () => {
    set_ui({ log_door: null });
    focus_seen(by_id("log-type"));
  });
  by_id("guess-rows").addEventListener("input", (event) => {
    const field = event.target;
    if (!(field instanceof HTMLInputElement)) return;
    const guess = field.dataset.guess as GuessField;
    dispatch({ do: "set_guess", point: Number(field.dataset.point), guess, text: field.value });
  });
  figure.addEventListener("click", (event) => {
    const place = placement();
    if (state().ui.log_door !== "guess" || state().look.log.guess === null || place === null) return;
    const { left, top } = figure.getBoundingClientRect();
    const { zero_x_px, px_per_c, surface_y_px, px_per_m } = place;
    const at = { x_px: event.clientX - left, y_px: event.clientY - top };
    dispatch({ do: "place_guess", spot: { ...at, zero_x_px, px_per_c, surface_y_px, px_per_m } });
  });
}

/** Shows the fields; the picture takes touches only while they are open. */
export function show_log_guess(s: Readonly<State>, open: boolean): void {
  by_id("log-picture").classList.toggle("placing", open);
  if (!open) return;
  const rows = s.look.log.guess ?? [];
  list(by_id("guess-rows"), template("template-guess-row"), rows, show_row);
  toggle(
    by_id("guess-unread"),
    rows.some((row) => row.depth_unread || row.temp_unread),
  );
}

function show_row(el: HTMLElement, row: GuessRow, index: number): void {
  const number = index + 1;
  const fields = [
    ["depth", row.depth, row.depth_unread, t("page-guess-depth-of", { number })],
    ["temp", row.temp, row.temp_unread, t("page-guess-temp-of", { number })],
  ] as const;
  for (const [name, text, unread, label] of fields) {
    const input = part<HTMLInputElement>(el, name);
    input.dataset.point = String(index);
    set_attr(input, "aria-label", label);
    set_value(input, text);
    input.classList.toggle("bad", unread);
    set_attr(input, "aria-invalid", unread ? "true" : null);
  }
}
