// Profile: the student's marks first, then what the rules found beside them, the other rules, and the readings.

import type { Action, FoundView, MarkView, ProfileView, RuleRow } from "../../generated/core";
import { reading_in_hand } from "../cursor";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { focus_is_lost } from "../focus";
import { mount_picture } from "../picture";
import { mount_readings } from "../readings";
import { save_picture } from "../save_picture";
import { num, say, say_into, t, t_into } from "../say";
import { dispatch, on_show, type State, set_ui, state } from "../state";
import { show_verdict } from "../verdict";
import { show_ways } from "../ways";
import { DOORS, is_door, mount_doors, show_door } from "./doors";

type Panel = "waiting" | "marking" | "found" | "rules" | "door" | "table";

/** Makes the screen work. */
export function mount_profile(): void {
  const screen = by_id("screen-profile");
  const figure = by_id("profile-picture");
  const picture = mount_picture(figure, "profile");
  const panels = new Map<string, HTMLElement>();
  for (const el of screen.querySelectorAll<HTMLElement>("[data-view]")) panels.set(el.dataset.view ?? "", el);
  const panel = (name: Panel): HTMLElement => panels.get(name) ?? screen;
  const readings = mount_readings(panel("table"), figure, picture, () => save_picture(picture));

  /** Where the focus goes after the next show: set by what was pressed. */
  let focus_next: "title" | "early" | null = null;
  let here = false;

  const press = (name: string, does: () => void): void => {
    for (const el of screen.querySelectorAll(`[data-part="${name}"]`)) el.addEventListener("click", does);
  };
  press("to-log", () => dispatch({ do: "go", screen: "log", question: null }));
  press("to-questions", () => dispatch({ do: "go", screen: "questions", question: null }));
  press("to-table", () => {
    focus_next = "title";
    set_ui({ panel: "table" });
  });
  press("to-rules", () => {
    focus_next = "title";
    set_ui({ panel: "rules", rule: 0 });
  });
  // One of these links is made with the items.
  screen.addEventListener("click", ({ target }) => {
    const link = target instanceof Element ? target.closest<HTMLElement>("[data-part^=to-]") : null;
    const door = DOORS.find((one) => link?.dataset.part === `to-${one}`);
    if (door === undefined) return;
    focus_next = "title";
    set_ui({ panel: door });
  });
  press("to-marks", () => {
    focus_next = "title";
    dispatch({ do: "show_marks", again: true });
  });
  press("to-found", () => {
    focus_next = "title";
    const { marking } = state().look.profile;
    if (state().ui.panel !== "main") set_ui({ panel: "main", rule: null });
    if (marking) dispatch({ do: "show_marks", again: false });
  });

  mount_marks(panel("marking"));
  mount_rules(panel("rules"));
  mount_doors(panel("door"));

  /** Check asks first when it would reveal answers. */
  function check(action: Action): boolean {
    focus_next = "title";
    if (action.do !== "check_marks" || action.early || state().look.profile.early === null) return false;
    focus_next = "early";
    set_ui({ panel: "early" });
    return true;
  }

  /** Either way out of the early check leads back to the marks. */
  function leave_early(action: Action): boolean {
    dispatch(action);
    focus_next = "title";
    set_ui({ panel: "main" });
    return true;
  }

  part(panel("marking"), "early").addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    set_ui({ panel: "main" });
    panel("marking").querySelector<HTMLElement>("[data-part=acts] button")?.focus();
  });

  function show(s: Readonly<State>): void {
    const arrived = s.look.place.screen === "profile" && !here;
    here = s.look.place.screen === "profile";
    if (!here) return;
    const view = s.look.profile;
    const now = panel_of(s);
    for (const [name, el] of panels) if (screen.contains(el)) toggle(el, name === now);
    if (now === "waiting" && view.not_yet !== null) say_into(part(panel("waiting"), "not-yet"), view.not_yet);
    if (now === "marking") show_marking(panel("marking"), s, check, leave_early);
    if (now === "found" && view.found !== null) show_found(panel("found"), s, view.found);
    if (now === "rules") show_rules(panel("rules"), s);
    if (now === "door" && is_door(s.ui.panel, view)) show_door(panel("door"), s, s.ui.panel);
    if (now === "table") readings.show(s, back_from_table(view));
    picture.show(s);
    if (arrived && focus_is_lost(by_id("profile-panel"))) focus_next ??= "title";
    move_focus(now);
  }

  function move_focus(now: Panel): void {
    const to = focus_next;
    focus_next = null;
    if (to === null) return;
    const el = panel(now);
    if (to === "title") by_id("profile-panel").scrollTop = 0;
    if (to === "early") part(el, "early-ways").querySelector("button")?.focus();
    else el.querySelector<HTMLElement>("[data-part=title]")?.focus();
  }

  on_show(show);
}

function panel_of(s: Readonly<State>): Panel {
  const view = s.look.profile;
  if (view.not_yet !== null) return "waiting";
  if (s.ui.panel === "table") return "table";
  if (view.marking || view.found === null) return "marking";
  if (is_door(s.ui.panel, view)) return "door";
  return s.ui.panel === "rules" && view.rules.length > 0 ? "rules" : "found";
}

function back_from_table(view: ProfileView): string {
  return view.marking ? t("page-profile-to-marks") : t("page-profile-to-found");
}

// The marks.

function mount_marks(panel: HTMLElement): void {
  const rows = part(panel, "marks");
  const mark_of = (event: Event): [MarkView, HTMLInputElement] | null => {
    const input = event.target instanceof HTMLInputElement ? event.target : null;
    const row = input?.closest("tr") ?? null;
    const mark = row === null ? undefined : state().look.profile.marks[[...rows.children].indexOf(row)];
    return input === null || mark === undefined ? null : [mark, input];
  };
  rows.addEventListener("input", (event) => {
    const at = mark_of(event);
    if (at === null) return;
    const [{ mark }, input] = at;
    if (input.type === "checkbox") dispatch({ do: "refuse_mark", mark, refused: input.checked });
    else if (input.dataset.part === "give") dispatch({ do: "type_give", mark, text: input.value });
    else dispatch({ do: "type_mark", mark, text: input.value });
  });
  rows.addEventListener("keydown", (event) => {
    const at = mark_of(event);
    if (at === null || event.key !== "Enter" || at[1].type !== "text") return;
    event.preventDefault();
    panel.querySelector<HTMLElement>("[data-part=acts] .go")?.click();
  });
  // A focused grip marks its row.
  for (const name of ["focusin", "focusout"]) {
    document.addEventListener(name, () => {
      const grip = name === "focusin" && document.activeElement instanceof HTMLElement ? document.activeElement : null;
      const marks = panel.hidden ? [] : state().look.profile.marks;
      for (const [index, { mark }] of marks.entries()) {
        rows.children[index]?.classList.toggle("on", grip?.dataset.grip === mark);
      }
    });
  }
}

function show_marking(
  panel: HTMLElement,
  s: Readonly<State>,
  check: (action: Action) => boolean,
  leave_early: (action: Action) => boolean,
): void {
  const view = s.look.profile;
  const early = s.ui.panel === "early" ? view.early : null;
  const unset = view.marks.every((mark) => mark.depth_m === null && !mark.refused);
  t_into(part(panel, "lead"), unset ? "page-profile-lead-unset" : "page-profile-lead");
  toggle(part(panel, "to-found"), view.checked && view.found !== null);
  list(part(panel, "marks"), template("template-profile-mark"), view.marks, fill_mark);

  const acts = part(panel, "acts");
  const waits = part(panel, "waits");
  toggle(acts, early === null);
  toggle(waits, early === null);
  show_ways(acts, [view.check, view.no_layers], { waits, press: check });
  if (view.check.waits === null && view.no_layers.waits === null) {
    t_into(waits, view.checked ? "page-profile-again" : "page-profile-covered");
  }

  toggle(part(panel, "early"), early !== null);
  if (early !== null) {
    say_into(by_id("profile-early"), early.said);
    say_into(by_id("profile-early-more"), early.more);
    show_ways(part(panel, "early-ways"), early.ways, { small: true, press: leave_early });
  }
  const [stand, way] = view.partner;
  const partner = part(panel, "partner");
  toggle(partner, early === null && stand.length > 0);
  list(partner, template("template-line"), stand, (el, said) => say_into(el, said));
  const ways = part(panel, "partner-ways");
  toggle(ways, early === null && way !== null);
  show_ways(ways, way === null ? [] : [way], { small: true, press: hand_over });
  const words = part(panel, "words");
  // Once all marks stand, partners have the place of what the words at them mean.
  toggle(words, early === null && stand.length === 0 && way === null);
  list(words, template("template-line"), view.mark_words, (el, said) => say_into(el, said));
  toggle(part(panel, "foot"), early === null);
  show_foot(panel, s);
}

/** After handing over, or back, the first field is next. */
function hand_over(action: Action): boolean {
  dispatch(action, () =>
    by_id("profile-panel").querySelector<HTMLElement>('[data-part="marks"] input[type="text"]')?.focus(),
  );
  return true;
}

function fill_mark(row: HTMLElement, mark: MarkView): void {
  const name = say(mark.name);
  set_text(part(row, "name"), name);
  const depth = part<HTMLInputElement>(row, "depth");
  const give = part<HTMLInputElement>(row, "give");
  const refused = part<HTMLInputElement>(row, "refused");
  set_value(depth, mark.depth_text);
  set_attr(depth, "aria-label", t("page-profile-mark-depth", { mark: name }));
  set_value(give, mark.give_text);
  set_attr(give, "aria-label", t("page-profile-mark-give", { mark: name }));
  refused.checked = mark.refused;
  set_attr(refused, "aria-label", t("page-profile-mark-refused", { mark: name }));
  const problem = part(row, "problem");
  problem.id = `profile-problem-${mark.mark}`;
  toggle(problem, mark.problem !== null);
  if (mark.problem !== null) say_into(problem, mark.problem);
  set_attr(depth, "aria-invalid", mark.problem === null ? null : "true");
  set_attr(depth, "aria-describedby", mark.problem === null ? null : problem.id);
}

/** The reading under the cursor, and the facts that need no cover where there is room for both. */
function show_foot(panel: HTMLElement, s: Readonly<State>): void {
  const reading = reading_in_hand(s);
  const line = part(panel, "reading");
  toggle(line, reading !== null);
  if (reading !== null) say_into(line, reading.said);
  const facts = part(panel, "facts");
  const room = reading === null || !s.look.profile.marking;
  toggle(facts, room && s.look.profile.facts.length > 0);
  list(facts, template("template-profile-fact"), s.look.profile.facts, (el, fact) => say_into(el, fact));
}

// What the rules found.

function show_found(panel: HTMLElement, s: Readonly<State>, found: FoundView): void {
  const view = s.look.profile;
  say_into(part(panel, "title"), found.title);
  const leads = part(panel, "leads");
  toggle(leads, found.lead.length > 0);
  list(leads, template("template-profile-lead"), found.lead, (el, lead, index) => {
    el.className = index === 0 ? "lead" : "";
    say_into(el, lead);
  });
  panel.classList.toggle("led", found.lead.length > 0 || found.doubts.length > 0);
  list(part(panel, "doubts"), template("template-profile-doubt"), found.doubts, (el, doubt) => {
    say_into(part(el, "where"), doubt.place);
    say_into(part(el, "text"), doubt.text);
    show_ways(part(el, "ways"), doubt.ways, { small: true });
  });
  list(part(panel, "items"), template("template-profile-item"), found.items, (el, item, index) => {
    say_into(part(el, "name"), item.name);
    set_text(part(el, "value"), item.value === null ? "" : num(item.value));
    say_into(part(el, "unit"), item.unit);
    part(el, "unit").parentElement?.classList.toggle("worded", item.value === null);
    show_verdict(part(el, "verdict"), item.verdict);
    toggle(part(el, "to-sure"), index === 0 && view.doors !== null);
    list(part(el, "notes"), template("template-profile-note"), item.notes, (note, said) => say_into(note, said));
  });
  show_foot(panel, s);
  const legs = part(panel, "legs");
  toggle(legs, view.legs_note !== null && reading_in_hand(s) === null);
  if (view.legs_note !== null) say_into(legs, view.legs_note);
  toggle(part(panel, "to-rules"), view.rules.length > 0);
  toggle(part(panel, "doors"), view.doors !== null);
}

// Other rules.

function rows_of(view: ProfileView): RuleRow[] {
  return view.rules.flatMap((group) => group.rows);
}

function mount_rules(panel: HTMLElement): void {
  const rows = (): HTMLElement[] => [...panel.querySelectorAll<HTMLElement>("tbody tr")];
  panel.addEventListener("focusin", (event) => {
    const row = event.target instanceof Element ? event.target.closest("tr") : null;
    const index = row === null ? -1 : rows().indexOf(row);
    if (index >= 0 && state().ui.rule !== index) set_ui({ rule: index });
  });
  panel.addEventListener("keydown", (event) => {
    const at = rows().indexOf(event.target as HTMLElement);
    const last = rows().length - 1;
    const next = { ArrowDown: Math.min(last, at + 1), ArrowUp: Math.max(0, at - 1), Home: 0, End: last }[event.key];
    if (at < 0 || next === undefined) return;
    event.preventDefault();
    rows()[next]?.focus();
  });
}

function show_rules(panel: HTMLElement, s: Readonly<State>): void {
  const view = s.look.profile;
  let flat = 0;
  list(part(panel, "groups"), template("template-profile-rules"), view.rules, (el, group) => {
    say_into(part(el, "name"), group.name);
    toggle(part(el, "spread"), group.spread !== null);
    if (group.spread !== null) say_into(part(el, "spread"), group.spread);
    list(part(el, "rows"), template("template-profile-rule"), group.rows, (row, rule) => {
      row.className = `${rule.own ? "own" : ""}${s.ui.rule === flat ? " on" : ""}`.trim();
      flat += 1;
      const name = say(rule.name);
      set_text(part(row, "name"), rule.own ? t("page-profile-own-rule", { rule: name }) : name);
      const depth =
        rule.depth === null ? t("page-profile-rule-none") : t("page-picture-depth", { depth: num(rule.depth) });
      set_text(part(row, "depth"), depth);
    });
  });
  if (s.ui.rule !== null && s.ui.rule >= rows_of(view).length) set_ui({ rule: null });
}
