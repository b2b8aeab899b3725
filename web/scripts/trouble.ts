// Notices about the work, at the top of the panel in hand: nothing is kept, the calculation stopped, another tab works here.
// The picture never shrinks for them.

import { on_stopped } from "./core";
import { by_id, focus_seen, set_text, toggle } from "./dom";
import { copy_as_text } from "./files";
import { save_notebook, work_here } from "./notebooks";
import { t } from "./say";
import { has_state, on_show, type State, set_ui } from "./state";

/** The notice that nothing is kept stays until the work has been saved to a file. */
let saved_once = false;

/** Wires the notices. */
export function mount_trouble(): void {
  on_stopped((what) => {
    if (has_state()) set_ui({ stopped: what });
  });
  by_id("notice-kept-save").addEventListener("click", () => {
    saved_once = true;
    void save_notebook();
    set_ui({ notice: null });
  });
  by_id("notice-kept-close").addEventListener("click", () => set_ui({ notice: null }));
  by_id("notice-stopped-copy").addEventListener("click", () => copy_as_text(what_happened));
  by_id("notice-stopped-close").addEventListener("click", () => set_ui({ stopped: null }));
  by_id("other-look").addEventListener("click", () => set_ui({ panel: "main" }));
  for (const id of ["other-work", "notice-looking-work"]) by_id(id).addEventListener("click", () => void work_here());
  on_show(show_trouble);
}

let what_happened = "";
let was_other = false;

function show_trouble(s: State): void {
  const panel = by_id(`screen-${s.look.place.screen}`).querySelector<HTMLElement>("[data-panel]");
  if (!panel) return;
  const notices = by_id("notices");
  if (notices.parentElement !== panel) panel.prepend(notices);
  const other = by_id("other-tab");
  if (panel.nextElementSibling !== other) panel.after(other);
  const asks = s.ui.panel === "other" && !s.writable;
  toggle(other, asks);
  toggle(panel, !asks);
  // What is being done stands where the eyes are, above the rest.
  const busy = by_id("busy");
  const place = asks ? other : panel;
  if (place.firstElementChild !== busy) place.prepend(busy);
  if (asks && !was_other) focus_seen(by_id("other-look"));
  was_other = asks;

  const nowhere = s.stored.where === "nowhere";
  toggle(by_id("notice-kept"), (nowhere && !saved_once) || s.ui.notice === "erased");
  set_text(by_id("notice-kept-title"), t(nowhere ? "page-trouble-nowhere" : "page-trouble-erased"));
  set_text(by_id("notice-kept-text"), t(nowhere ? "page-trouble-nowhere-text" : "page-trouble-erased-text"));
  toggle(by_id("notice-kept-close"), !nowhere);
  toggle(by_id("notice-stopped"), s.ui.stopped !== null);
  what_happened = s.ui.stopped ?? "";
  toggle(by_id("notice-looking"), !s.writable && !asks);
  for (const field of panel.parentElement?.querySelectorAll<HTMLInputElement>("input[type=text], textarea") ?? []) {
    field.readOnly = !s.writable;
  }
}
