// The doors of Profile behind what was found: how sure it is, the same cast read otherwise, how hard the water is to mix.

import type { DoorView, Otherwise, ProfileView } from "../../generated/core";
import { list, part, template, toggle } from "../dom";
import { read_otherwise } from "../ranges";
import { say_into, t_into } from "../say";
import { type State, set_ui, state } from "../state";

/** The doors, by the panel they open. */
export const DOORS = ["sure", "otherwise", "mixing"] as const;
export type Door = (typeof DOORS)[number];

/** Whether a panel is one of the doors, and there is something behind it. */
export function is_door(panel: string, view: ProfileView): panel is Door {
  return (DOORS as readonly string[]).includes(panel) && view.doors !== null;
}

/** Wires the form of the cast read otherwise. */
export function mount_doors(panel: HTMLElement): void {
  const form = part(panel, "form");
  form.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLSelectElement)) return;
    const otherwise = { ...state().ui.otherwise, [target.name]: target.value } as Otherwise;
    set_ui({ otherwise });
  });
}

/** Fills the panel of the door that is open. */
export function show_door(panel: HTMLElement, s: Readonly<State>, door: Door): void {
  const { doors } = s.look.profile;
  if (doors === null) return;
  t_into(part(panel, "title"), title_of(door));
  const form = part(panel, "form");
  toggle(form, door === "otherwise");
  for (const select of form.querySelectorAll("select")) {
    select.value = s.ui.otherwise[select.name as keyof Otherwise];
  }
  const view = door === "otherwise" ? (read_otherwise(s)?.door ?? null) : doors[door];
  panel.setAttribute("aria-busy", String(view === null));
  if (view !== null) fill(panel, view);
  else if (door !== "otherwise") fill(panel, doors.waiting);
}

function title_of(door: Door): "page-profile-to-sure" | "page-profile-to-otherwise" | "page-profile-to-mixing" {
  switch (door) {
    case "sure":
      return "page-profile-to-sure";
    case "otherwise":
      return "page-profile-to-otherwise";
    case "mixing":
      return "page-profile-to-mixing";
  }
}

function fill(panel: HTMLElement, view: DoorView): void {
  list(part(panel, "lead"), template("template-profile-lead"), view.lead, (el, said) => say_into(el, said));
  list(part(panel, "groups"), template("template-door-group"), view.groups, (el, group) => {
    list(part(el, "heads"), template("template-door-head"), group.heads, (head, said) => say_into(head, said));
    list(part(el, "rows"), template("template-door-row"), group.rows, (row, one) => {
      row.className = one.own ? "own" : "";
      list(row, template("template-door-cell"), one.cells, (cell, said) => say_into(cell, said));
      const share = one.per_cent ?? 0;
      row.style.setProperty("--share", `${share}%`);
    });
  });
  list(part(panel, "notes"), template("template-profile-note"), view.notes, (el, said) => say_into(el, said));
}
