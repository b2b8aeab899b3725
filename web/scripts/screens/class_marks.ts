// Class, the marks: a table for the mark book, slips for the seats, the class as a file. A list of students is read from its
// field when a file is saved, and kept nowhere.

import { class_book, class_new } from "../class_state";
import { class_csv, class_slips, zip_of } from "../core";
import { by_id, list, part, set_text, template, toggle } from "../dom";
import { save_file } from "../files";
import { page_file } from "../page_file";
import { num, say, t } from "../say";
import { level_given } from "./class_sheets";

/** Wires the panel. */
export function mount_marks(el: HTMLElement): void {
  const students = by_id<HTMLTextAreaElement>("class-students");
  const comma = by_id<HTMLInputElement>("class-comma");
  const save = (wide: boolean): void => {
    const { text, view } = class_book();
    const names = new Map(view.questions.map((one) => [one.kind, say(one.name)] as const));
    const csv = class_csv(text, wide, comma.checked, students.value, names);
    const rows = wide ? view.sheets.length : view.sheets.reduce((sum, sheet) => sum + sheet.answers.length, 0);
    saved(`${name()}-${wide ? "seats" : "questions"}.csv`, csv, "text/csv", t("class-saved-rows", { rows }));
  };
  function saved(file: string, content: string | Blob, type: string, what: string): void {
    save_file(file, content, type);
    set_text(part(el, "saved"), t("class-saved", { name: file, what }));
    toggle(part(el, "saved"), true);
  }
  part(el, "wide").addEventListener("click", () => save(true));
  part(el, "long").addEventListener("click", () => save(false));
  part(el, "save-class").addEventListener("click", () =>
    saved(
      `${name()}.json`,
      class_book().text,
      "application/json",
      t("class-saved-sheets", { sheets: class_book().view.sheets.length }),
    ),
  );
  part(el, "slips").addEventListener("click", () => {
    show_slips();
    print();
  });
  part(el, "slips-file").addEventListener("click", () => {
    const { slips } = show_slips();
    const what = t("class-saved-sheets", { sheets: slips.length });
    saved(`${name()}-feedback.html`, page_file(name(), SLIP_LOOK, slips), "text/html", what);
  });
  part(el, "slips-zip").addEventListener("click", () => {
    const { slips, names } = show_slips();
    const files = slips.map((slip, at) => page_file(names[at] ?? "", SLIP_LOOK, [slip]));
    const zip = zip_of(
      names.map((one) => `${one}.html`),
      files.map((file) => new TextEncoder().encode(file)),
    );
    const what = t("class-saved-sheets", { sheets: slips.length });
    saved(`${name()}-feedback.zip`, new Blob([zip]), "application/zip", what);
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
    toggle(part(el, "saved"), false);
    class_new();
  });
}

/** Nothing of the marks changes here; the fields keep what is typed. */
export function show_marks(el: HTMLElement): void {
  for (const back of ["slips", "slips-file", "slips-zip"]) {
    toggle(part(el, back), class_book().view.sheets.length > 0);
  }
}

/** What a text may be called as a file. */
function file_name(texts: readonly string[]): string {
  return texts
    .map((text) => text.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-"))
    .filter((text) => text !== "" && text !== "-")
    .join("-");
}

function name(): string {
  return file_name(["class", class_book().view.code]);
}

/** How a slip looks in a file of its own. */
const SLIP_LOOK =
  "body{font:1rem/1.5 sans-serif;max-width:42rem;margin:0 auto;padding:1rem}article{border-bottom:1px solid;padding:1rem 0;break-inside:avoid}h2{font-size:1.2rem}p{margin:.2rem 0}.mine{font-style:italic}div>div{margin-top:.8rem}";

/** One slip a seat, to be printed or saved, and what each is called as a file. */
function show_slips(): { slips: HTMLElement[]; names: string[] } {
  const all = class_slips(class_book().text);
  const place = by_id("class-slips");
  list(place, template("template-class-slip"), all, (el, slip) => {
    set_text(part(el, "who"), [slip.class, slip.group, slip.seat, slip.receipt].filter(Boolean).join(" · "));
    const sum = t("class-points-of", { points: num(slip.points), max: num(slip.max) });
    set_text(part(el, "sum"), [sum, ...slip.notes.map(say)].join(" · "));
    list(part(el, "lines"), template("template-class-slip-line"), slip.lines, (line, one) => {
      set_text(part(line, "ask"), say(one.ask));
      set_text(part(line, "given"), one.given.map(say).join(" · "));
      const points = t("class-points-of", { points: num(one.points), max: num(one.max) });
      const said = [one.after_shown, one.state, one.said].map((text) => (text === null ? "" : say(text)));
      set_text(part(line, "state"), [points, ...said, ...one.levels.map(level_given)].filter(Boolean).join(" · "));
      const words = [one.why, one.comment].filter(Boolean).join(" · ");
      set_text(part(line, "comment"), words && t("class-slip-comment", { words }));
    });
  });
  const slips = [...place.children].filter((el) => el instanceof HTMLElement);
  // No two are called the same: each seat has its receipt.
  return { slips, names: all.map((slip, at) => file_name([slip.group, slip.seat, slip.receipt, String(at + 1)])) };
}
