// Class: eight groups on one axis, what to say of them, what came in, what they know, and their marks.

import type { CastRow, Outcome } from "../../generated/core";
import {
  type ClassPanel,
  class_book,
  class_do,
  class_open,
  class_take,
  offer_class,
  open_last_class,
  set_class,
} from "../class_state";
import { open_class } from "../core";
import { by_id, list, part, set_attr, set_text, template, toggle } from "../dom";
import { on_class_files } from "../files";
import { focus_is_lost } from "../focus";
import { num, say, say_into, speak, t, t_into } from "../say";
import { on_show, state } from "../state";
import { mount_lesson, open_lesson, show_lesson } from "./class_lesson";
import { mount_marks, show_marks } from "./class_marks";
import { mount_notes, show_notes } from "./class_notes";
import { mount_sheets, show_seat, show_sheets, show_undo } from "./class_sheets";
import { mount_wall, show_wall, to_wall } from "./class_wall";
import { mount_why, show_why } from "./class_why";
import { mount_years, show_years, take_years } from "./class_years";

const PANELS: readonly ClassPanel[] = [
  "list",
  "add",
  "answers",
  "sheets",
  "seat",
  "why",
  "marks",
  "lesson",
  "years",
  "notes",
];
const PARTS = ["layers", "curves", "middle"] as const;

/** Makes the screen work. */
export function mount_class(): void {
  const screen = by_id("screen-class");
  const panel = by_id("class-panel");
  const views = new Map<string, HTMLElement>();
  for (const el of panel.querySelectorAll<HTMLElement>("[data-view]")) views.set(el.dataset.view ?? "", el);
  const view = (name: ClassPanel): HTMLElement => views.get(name) ?? panel;
  let here = false;

  panel.addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>("button[data-part]") : null;
    const to = PANELS.find((one) => button?.dataset.part === `to-${one}`);
    if (to !== undefined) open_panel(to);
    if (button?.dataset.part !== "undo") return;
    const { panel: from } = class_book();
    class_do({ do: "undo" });
    // The button goes with the last step, the sheet with what brought it.
    if (from !== class_book().panel || !button.checkVisibility()) focus_title();
  });
  const focus_title = (): void => view(class_book().panel).querySelector<HTMLElement>("[data-part=title]")?.focus();
  function open_panel(to: ClassPanel): void {
    set_class({ panel: to });
    panel.scrollTop = 0;
    view(to).querySelector<HTMLElement>("[data-part=title]")?.focus();
  }

  panel.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || event.defaultPrevented || state().ui.menu !== null) return;
    const { panel: from, seat, view: shown, wall } = class_book();
    if (from === "list" || wall) return;
    // Back to where one came from, and to what opened it.
    open_panel(from === "seat" ? "sheets" : "list");
    const row = from === "seat" ? shown.sheets.findIndex((one) => one.key === seat) : -1;
    const door =
      row < 0
        ? view("list").querySelector<HTMLElement>(`[data-part="to-${from}"]`)
        : part(view("sheets"), "rows").children[row]?.querySelector<HTMLElement>("button");
    door?.focus();
  });

  mount_list(view("list"));
  mount_add(view("add"));
  mount_answers(view("answers"));
  mount_sheets(view("sheets"), view("seat"));
  mount_why(view("why"));
  mount_marks(view("marks"));
  mount_lesson(view("lesson"));
  mount_years(view("years"));
  mount_notes(view("notes"));
  mount_wall();
  on_class_files(take_class_files);
  void open_last_class();

  on_show((s) => {
    const arrived = s.look.place.screen === "class" && !here;
    here = s.look.place.screen === "class";
    if (!here) return;
    const book = class_book();
    for (const [name, el] of views) toggle(el, name === book.panel);
    screen.classList.toggle("on-lesson", book.panel === "lesson");
    if (book.panel === "list") show_list(view("list"));
    if (book.panel === "add") show_add(view("add"));
    if (book.panel === "answers") show_answers(view("answers"));
    if (book.panel === "sheets") show_sheets(view("sheets"));
    if (book.panel === "seat") show_seat(view("seat"));
    if (book.panel === "why") show_why(view("why"));
    if (book.panel === "marks") show_marks(view("marks"));
    if (book.panel === "lesson") show_lesson(view("lesson"));
    if (book.panel === "years") show_years(view("years"));
    if (book.panel === "notes") show_notes(view("notes"));
    show_wall(s);
    if (arrived && focus_is_lost(screen)) view(book.panel).querySelector<HTMLElement>("[data-part=title]")?.focus();
  });
}

/** Takes files into the class when it is on the screen; false: they are for the notebook. */
async function take_class_files(files: readonly File[]): Promise<boolean> {
  if (state().look.place.screen !== "class") return false;
  const bytes = await Promise.all(files.map(async (file) => new Uint8Array(await file.arrayBuffer())));
  if (class_book().panel === "years") {
    take_years(bytes);
    return true;
  }
  const [only] = bytes;
  if (class_book().panel === "lesson" && bytes.length === 1 && only !== undefined && open_lesson(only)) return true;
  const saved = bytes.length === 1 && only !== undefined ? open_class(new TextDecoder().decode(only)) : null;
  if (saved !== null) {
    offer_class(saved);
    told_class();
    return true;
  }
  class_take(
    files.map((file) => file.name),
    bytes,
  );
  speak(said_counts());
  return true;
}

/** Says what a saved class did: it is open, or it waits. */
function told_class(): void {
  const { offered, view } = class_book();
  if (offered === null) speak(say(view.title));
  else part(by_id("class-panel"), "offered-no").focus();
}

// The list beside the picture.

function mount_list(el: HTMLElement): void {
  const title = part(el, "title");
  part(el, "offered-no").addEventListener("click", () => {
    set_class({ offered: null });
    title.focus();
  });
  part(el, "offered-yes").addEventListener("click", () => {
    const { offered } = class_book();
    if (offered === null) return;
    class_open(offered.text);
    title.focus();
  });
  part(el, "wall").addEventListener("click", to_wall);
  part(el, "parts").addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest("button") : null;
    const of = PARTS.find((one) => one === button?.dataset.of);
    if (of !== undefined) set_class({ part: of });
  });
  part(el, "casts").addEventListener("click", ({ target }) => {
    const row = target instanceof Element && target.closest("button") !== null ? target.closest("tr") : null;
    const cast = row === null ? undefined : class_book().view.casts[[...part(el, "casts").children].indexOf(row)];
    if (cast === undefined) return;
    const off = class_book().against === cast.cast_id;
    // Against the rest is seen in curves; cores stand side by side anyway.
    const to = class_book().part === "layers" && !off ? "curves" : class_book().part;
    set_class({ against: off ? null : cast.cast_id, part: to });
  });
  part(el, "hide").addEventListener("click", () => class_do({ do: "hide_names", on: !class_book().view.hidden }));
  part(el, "shuffle").addEventListener("click", () => {
    const [seed] = crypto.getRandomValues(new Uint32Array(1));
    class_do({ do: "shuffle", seed: class_book().view.shuffled ? null : (seed ?? 1) });
  });
}

function show_list(el: HTMLElement): void {
  const { view, part: shown, against, kept, offered } = class_book();
  const empty = view.casts.length === 0;
  toggle(part(el, "offered"), offered !== null);
  if (offered !== null) set_text(part(el, "offered-holds"), t("class-open-holds", { sheets: offered.sheets }));
  say_into(part(el, "title"), view.title);
  say_into(part(el, "sentence"), view.sentence);
  toggle(part(el, "parts"), !empty);
  toggle(part(el, "table"), !empty);
  for (const button of part(el, "parts").querySelectorAll<HTMLElement>("button")) {
    set_attr(button, "aria-pressed", String(button.dataset.of === shown));
  }
  list<CastRow>(part(el, "casts"), template("template-class-cast"), view.casts, (row, cast) => {
    set_text(part(row, "name"), cast.name);
    set_attr(part(row, "name"), "aria-pressed", String(cast.cast_id === against));
    row.classList.toggle("on", cast.cast_id === against);
    set_text(part(row, "sheets"), String(cast.sheets));
    const without = t(cast.too_few ? "class-none-told" : "class-none");
    set_text(part(row, "value"), cast.value === null ? without : num(cast.value));
    say_into(part(row, "said"), cast.said);
  });
  list(part(el, "talk"), template("template-class-talk"), view.talk, (one, said) => say_into(one, said));
  toggle(part(el, "not-kept"), !kept && !empty);
  for (const name of ["wall", "to-answers", "to-sheets", "to-why", "to-marks", "hide", "shuffle"]) {
    toggle(part(el, name), !empty);
  }
  part(el, "to-add").classList.toggle("go", empty);
  part(el, "to-add").classList.toggle("do", !empty);
  set_text(part(el, "hide"), t(view.hidden ? "class-hide-not" : "class-hide"));
  set_text(part(el, "shuffle"), t(view.shuffled ? "class-shuffle-not" : "class-shuffle"));
  show_undo(part(el, "undo"));
}

// What was dropped.

function mount_add(el: HTMLElement): void {
  for (const [button, id] of [
    ["choose", "class-files"],
    ["choose-folder", "class-folder"],
  ] as const) {
    const field = by_id<HTMLInputElement>(id);
    part(el, button).addEventListener("click", () => field.click());
    field.addEventListener("change", () => {
      void take_class_files([...(field.files ?? [])]).finally(() => {
        field.value = "";
      });
    });
  }
  const lines = by_id<HTMLTextAreaElement>("class-lines");
  part(el, "take-lines").addEventListener("click", () => {
    if (lines.value.trim() === "") return lines.focus();
    class_take([t("class-add-pasted")], [new TextEncoder().encode(lines.value)]);
    lines.value = "";
    speak(said_counts());
  });
}

function said_counts(): string {
  const { taken } = class_book();
  if (taken === null) return "";
  const { new: fresh, same_again: again, newer_than: newer, needs_a_look: look, not_ours: other } = taken.counts;
  return t("class-counts", { all: taken.rows.length, fresh, again, newer, look, other });
}

const OUTCOMES: Record<Outcome, string> = {
  new: "class-outcome-new",
  same_again: "class-outcome-same-again",
  newer_than: "class-outcome-newer-than",
  needs_a_look: "class-outcome-needs-a-look",
  not_ours: "class-outcome-not-ours",
};

function show_add(el: HTMLElement): void {
  const { taken } = class_book();
  toggle(part(el, "counts"), taken !== null);
  if (taken !== null) set_text(part(el, "counts"), said_counts());
  list(part(el, "rows"), template("template-class-taken"), taken?.rows ?? [], (row, one) => {
    set_text(part(row, "name"), one.name);
    t_into(part(row, "outcome"), OUTCOMES[one.outcome]);
    row.classList.toggle("look", one.outcome === "needs_a_look" || one.outcome === "not_ours");
    set_text(part(row, "why"), one.why.map(say).join(" "));
  });
}

// What they know.

function mount_answers(el: HTMLElement): void {
  part(el, "rows").addEventListener("click", ({ target }) => {
    const row = target instanceof Element && target.closest("button") !== null ? target.closest("tr") : null;
    if (row !== null) set_class({ question: [...part(el, "rows").children].indexOf(row) });
  });
}

function show_answers(el: HTMLElement): void {
  const { view } = class_book();
  const question = class_book().question ?? view.next_question ?? 0;
  toggle(part(el, "next"), view.next !== null);
  if (view.next !== null) say_into(part(el, "next"), view.next);
  const no_words = view.questions.every(({ seats }) => seats.written + seats.marked === 0);
  part(el, "rows").parentElement?.classList.toggle("no-words", no_words);
  list(part(el, "rows"), template("template-class-question"), view.questions, (row, one, index) => {
    say_into(part(row, "ask"), one.name);
    row.classList.toggle("on", index === question);
    set_attr(part(row, "ask"), "aria-pressed", String(index === question));
    set_text(part(row, "first"), String(one.seats.right_first));
    set_text(part(row, "later"), String(one.seats.right_later));
    set_text(part(row, "not-yet"), String(one.seats.not_yet));
    set_text(part(row, "blank"), String(one.seats.blank));
    set_text(part(row, "untold"), String(one.seats.cannot_tell));
    const words = one.seats.written + one.seats.marked;
    set_text(part(row, "words"), words === 0 ? "–" : t("class-right-of", { right: one.seats.marked, asked: words }));
  });
  const one = view.questions[question];
  const in_hand = part(el, "in-hand");
  toggle(in_hand, one !== undefined);
  if (one === undefined) return;
  say_into(part(in_hand, "ask"), one.ask);
  toggle(part(in_hand, "idea"), one.idea !== null);
  toggle(part(in_hand, "told"), one.idea !== null);
  toggle(part(in_hand, "varies"), one.varies);
  if (one.idea !== null) {
    set_text(part(in_hand, "idea"), t("class-idea", { count: say(one.idea.count), said: say(one.idea.name) }));
    set_text(part(in_hand, "told"), t("class-idea-told", { said: say(one.idea.said) }));
  }
  const pair = part(in_hand, "pair");
  toggle(pair, one.pair !== null);
  const cards = [...pair.querySelectorAll<HTMLElement>(".card")];
  one.pair?.forEach((answer, index) => {
    const card = cards[index];
    if (card === undefined) return;
    set_text(part(card, "given"), answer.given.map(say).join(" · "));
    set_text(part(card, "reason"), answer.reason);
  });
}
