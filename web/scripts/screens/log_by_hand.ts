// Three readings placed on the picture by hand: one is chosen, then the picture is touched, or arrow keys move it. The rest
// draws afterwards.

import type { HandKey, HandRow, PlacementView } from "../../generated/core";
import { by_id, focus_seen, list, part, set_attr, set_text, template, toggle } from "../dom";
import { say, say_into, speak, t } from "../say";
import { dispatch, type State, set_ui, state } from "../state";

const KEYS: Readonly<Record<string, HandKey>> = {
  ArrowUp: "up",
  ArrowDown: "down",
  ArrowLeft: "colder",
  ArrowRight: "warmer",
};

/** The reading in hand. */
let chosen = 0;

/** Wires the door. `placement` says where things stand in the picture of Log. */
export function mount_log_by_hand(figure: HTMLElement, placement: () => PlacementView | null): void {
  by_id("log-to-by-hand").addEventListener("click", open_by_hand);
  by_id("by-hand-done").addEventListener("click", () => close("log-to-by-hand"));
  by_id("by-hand-draw").addEventListener("click", () => dispatch({ do: "draw_rest" }, () => close("log-profile")));
  by_id("by-hand-check").addEventListener("click", check);
  const rows = by_id("by-hand-rows");
  const pressed = ({ target }: Event): number =>
    target instanceof HTMLElement && target.dataset.part === "pick" ? Number(target.dataset.point) : -1;
  rows.addEventListener("focusin", (event) => choose(pressed(event)));
  rows.addEventListener("click", (event) => choose(pressed(event)));
  rows.addEventListener("keydown", (event) => {
    const hand = KEYS[event.key];
    const point = pressed(event);
    if (hand === undefined || point < 0 || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    dispatch({ do: "key_by_hand", point, hand }, () => tell(point));
  });
  figure.addEventListener("click", (event) => {
    const place = placement();
    if (state().ui.log_door !== "by_hand" || place === null) return;
    const { left, top } = figure.getBoundingClientRect();
    const { zero_x_px, px_per_c, surface_y_px, px_per_m } = place;
    const at = { x_px: event.clientX - left, y_px: event.clientY - top };
    const point = chosen;
    dispatch({ do: "place_by_hand", point, spot: { ...at, zero_x_px, px_per_c, surface_y_px, px_per_m } }, () => {
      const next = state().look.log.by_hand?.rows.findIndex((row) => !row.is_placed) ?? -1;
      choose(next);
    });
  });
}

/** Opens the door and gives it the focus. */
export function open_by_hand(): void {
  set_ui({ log_door: "by_hand" });
  by_id("by-hand-title").focus();
}

function close(to: string): void {
  set_ui({ log_door: null });
  focus_seen(by_id(to));
}

function choose(point: number): void {
  if (point < 0 || point === chosen) return;
  chosen = point;
  show_log_by_hand(state(), true);
}

/** Where a point lies now, for whoever does not see it. */
function tell(point: number): void {
  const row = state().look.log.by_hand?.rows[point];
  if (row) speak(say(row.spoken));
}

function check(): void {
  if (!state().look.log.by_hand?.can_check) return;
  dispatch({ do: "check_by_hand" }, () => {
    const { rows = [], all_right = false } = state().look.log.by_hand ?? {};
    speak(rows.flatMap(({ name, said }) => (said ? [`${say(name)}: ${say(said)}`] : [])).join(" "));
    if (all_right) focus_seen(by_id("by-hand-draw"));
    else rows_button(rows.findIndex((row) => !row.right))?.focus();
  });
}

function rows_button(point: number): HTMLElement | null {
  return by_id("by-hand-rows").querySelector(`[data-point="${point}"]`);
}

/** Shows the readings; the picture takes touches only while they are open. */
export function show_log_by_hand(s: Readonly<State>, open: boolean): void {
  const view = s.look.log.by_hand;
  toggle(by_id("log-to-by-hand"), view !== null);
  if (!open || view === null) return;
  by_id("log-picture").classList.add("placing");
  list(by_id("by-hand-rows"), template("template-hand-row"), view.rows, show_row);
  toggle(by_id("by-hand-all"), view.all_right);
  toggle(by_id("by-hand-draw"), view.checked && !view.drawn);
  by_id("by-hand-draw").classList.toggle("go", view.all_right);
  by_id("by-hand-draw").classList.toggle("do", !view.all_right);
  const button = by_id("by-hand-check");
  button.classList.toggle("go", !view.all_right);
  button.classList.toggle("do", view.all_right);
  set_attr(button, "aria-disabled", view.can_check ? null : "true");
  set_attr(button, "aria-describedby", view.can_check ? null : "by-hand-waits");
  toggle(by_id("by-hand-waits"), !view.can_check);
}

function show_row(el: HTMLElement, row: HandRow, index: number): void {
  const pick = part(el, "pick");
  pick.dataset.point = String(index);
  set_text(pick, say(row.name));
  set_attr(pick, "aria-label", t("page-by-hand-keys", { reading: `${say(row.name)}, ${say(row.spoken)}` }));
  set_attr(pick, "aria-pressed", index === chosen ? "true" : "false");
  el.classList.toggle("placed", row.is_placed);
  el.classList.toggle("right", row.right);
  const said = part(el, "said");
  toggle(said, row.said !== null);
  if (row.said) say_into(said, row.said);
}
