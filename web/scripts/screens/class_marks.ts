// Class, the marks: a table for the mark book, slips for the seats, the class as a file. A list of students is read from its
// field when a file is saved, and kept nowhere.

import { class_book, class_new } from "../class_state";
import { class_csv, class_slips } from "../core";
import { by_id, list, part, set_text, template, toggle } from "../dom";
import { save_file } from "../files";
import { num, say, t } from "../say";

/** Wires the panel. */
export function mount_marks(el: HTMLElement): void {
  const students = by_id<HTMLTextAreaElement>("class-students");
  const comma = by_id<HTMLInputElement>("class-comma");
  const save = (wide: boolean): void => {
    const { text } = class_book();
    const csv = class_csv(text, wide, comma.checked, students.value);
    save_file(`${name()}-${wide ? "seats" : "questions"}.csv`, csv, "text/csv");
  };
  part(el, "wide").addEventListener("click", () => save(true));
  part(el, "long").addEventListener("click", () => save(false));
  part(el, "save-class").addEventListener("click", () =>
    save_file(`${name()}.json`, class_book().text, "application/json"),
  );
  part(el, "slips").addEventListener("click", () => {
    show_slips();
    print();
  });
  const ask = part(el, "new-ask");
  part(el, "new-class").addEventListener("click", () => {
    toggle(ask, true);
    part(el, "new-no").focus();
  });
  part(el, "new-no").addEventListener("click", () => {
    toggle(ask, false);
    part(el, "new-class").focus();
  });
  part(el, "new-yes").addEventListener("click", () => {
    toggle(ask, false);
    students.value = "";
    class_new();
  });
}

/** Nothing of the marks changes here; the fields keep what is typed. */
export function show_marks(el: HTMLElement): void {
  toggle(part(el, "slips"), class_book().view.sheets.length > 0);
}

function name(): string {
  return [
    "class",
    class_book()
      .view.code.toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "-"),
  ]
    .filter(Boolean)
    .join("-");
}

/** One slip a seat, on paper. */
function show_slips(): void {
  list(by_id("class-slips"), template("template-class-slip"), class_slips(class_book().text), (el, slip) => {
    set_text(part(el, "who"), [slip.class, slip.group, slip.seat, slip.receipt].filter(Boolean).join(" · "));
    const sum = t("class-points-of", { points: num(slip.points), max: num(slip.max) });
    set_text(part(el, "sum"), [sum, ...slip.notes.map(say)].join(" · "));
    list(part(el, "lines"), template("template-class-slip-line"), slip.lines, (line, one) => {
      set_text(part(line, "ask"), say(one.ask));
      const points = t("class-points-of", { points: num(one.points), max: num(one.max) });
      const state = one.state === null ? "" : say(one.state);
      const given = one.given.map(say).join(" · ");
      set_text(
        part(line, "state"),
        [points, state, given, one.said === null ? "" : say(one.said)].filter(Boolean).join(" · "),
      );
      set_text(part(line, "comment"), [one.why, one.comment].filter(Boolean).join(" · "));
    });
  });
}
