// Class, the sheets: what must be looked at with its ways out, every sheet with its points, and one sheet answer by answer.

import type { AnswerRow, ClassAction, ClassWay, SheetRow } from "../../generated/core";
import { class_book, class_do, set_class } from "../class_state";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { num, say, say_into, t } from "../say";

/** Wires both panels. */
export function mount_sheets(sheets: HTMLElement, seat: HTMLElement): void {
  for (const el of [sheets, seat]) {
    el.addEventListener("click", ({ target }) => {
      const button = target instanceof Element ? target.closest<HTMLElement>("button[data-way]") : null;
      const action = button === null ? undefined : ways.get(button);
      if (action !== undefined) class_do(action);
    });
  }
  const code = by_id<HTMLInputElement>("class-code");
  code.addEventListener("change", () => class_do({ do: "set_code", text: code.value }));
  part(sheets, "rows").addEventListener("click", ({ target }) => {
    const row = target instanceof Element && target.closest("button") !== null ? target.closest("tr") : null;
    const sheet = row === null ? undefined : class_book().view.sheets[[...part(sheets, "rows").children].indexOf(row)];
    if (sheet !== undefined) open_seat(seat, sheet.key);
  });
  const member = (does: (member: string) => ClassAction): void => {
    const key = class_book().seat;
    if (key !== null) class_do(does(key));
  };
  const group = by_id<HTMLInputElement>("class-group");
  const place = by_id<HTMLInputElement>("class-seat");
  const late = by_id<HTMLInputElement>("class-late");
  const practice = by_id<HTMLInputElement>("class-practice");
  group.addEventListener("change", () => member((m) => ({ do: "set_group", member: m, text: group.value })));
  place.addEventListener("change", () => member((m) => ({ do: "set_seat", member: m, text: place.value })));
  late.addEventListener("change", () => member((m) => ({ do: "late", member: m, on: late.checked })));
  practice.addEventListener("change", () => member((m) => ({ do: "practice", member: m, on: practice.checked })));
  part(seat, "answers").addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    const { sheet, answer } = answer_of(seat, target.closest<HTMLElement>(".card"));
    if (sheet === undefined || answer === undefined) return;
    const action = mark_of(target, sheet.key, answer);
    if (action !== null) class_do(action);
  });
  seat.addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>("button[data-part]") : null;
    const card = button?.closest<HTMLElement>(".card") ?? null;
    const { answer } = answer_of(seat, card);
    // Either button is gone afterwards; the focus stays near.
    if (button?.dataset.part === "keep" && answer && card) {
      class_do({ do: "keep_comment", text: answer.comment });
      part(card, "comment").focus();
    }
    if (button?.dataset.part === "drop") {
      class_do({ do: "drop_comment", text: button.dataset.text ?? "" });
      part(seat, "title").focus();
    }
  });
}

/** What a field of an answer's card does. */
function mark_of(field: HTMLInputElement | HTMLSelectElement, member: string, answer: AnswerRow): ClassAction | null {
  const { question } = answer;
  const text = field.value;
  switch (field.dataset.part) {
    case "points":
      return { do: "set_points", member, question, text };
    case "why":
      return { do: "set_why", member, question, text };
    case "comment":
      return { do: "set_comment", member, question, text };
    case "bank":
      // Put behind what stands there.
      field.value = "";
      return { do: "set_comment", member, question, text: [answer.comment, text].filter(Boolean).join(" ") };
    case "level":
      return {
        do: "set_level",
        member,
        question: field.dataset.of ?? question,
        level: text === "" ? null : Number(text),
      };
    default:
      return null;
  }
}

function open_seat(seat: HTMLElement, key: string): void {
  set_class({ panel: "seat", seat: key });
  part(seat, "title").focus();
}

function answer_of(
  seat: HTMLElement,
  card: HTMLElement | null,
): { sheet: SheetRow | undefined; answer: AnswerRow | undefined } {
  const { view, seat: key } = class_book();
  const sheet = view.sheets.find((one) => one.key === key);
  const index = card === null ? -1 : [...part(seat, "answers").children].indexOf(card);
  return { sheet, answer: sheet?.answers[index] };
}

const LEVELS = ["class-level-none", "class-level-0", "class-level-1", "class-level-2", "class-level-3"] as const;

/** Value and words of a choice. */
export type Option = [value: string, words: string];

/** The teacher's own words of a level. */
function words_of_level(words: string | undefined, level: number): string | null {
  return words ? `${level}: ${words}` : null;
}

/** Fills a list to choose from; what was chosen stays where it still is one of them. */
export function options(select: HTMLSelectElement, all: readonly Option[]): void {
  const before = select.value;
  list(select, template("template-class-option"), all, (el, [value, words]) => {
    set_attr(el, "value", value);
    set_text(el, words);
  });
  if (all.some(([value]) => value === before)) select.value = before;
}

/** What each button of a row does. */
const ways = new WeakMap<Element, ClassAction>();

/** `on`: how many of them, from the first, stand and are taken back by a press. */
function show_ways(el: Element, all: readonly ClassWay[], on: number | null = null): void {
  list(el, template("template-class-way"), all, (button, way, index) => {
    set_attr(button, "aria-pressed", on === null ? null : String(index < on));
    say_into(button, way.label);
    button.dataset.way = "";
    ways.set(button, way.action);
  });
}

/** Everything that came in. */
export function show_sheets(el: HTMLElement): void {
  const { view } = class_book();
  set_value(by_id<HTMLInputElement>("class-code"), view.code);
  const looks = view.sheets.flatMap((sheet) => sheet.looks.map((look) => ({ sheet, look })));
  list(part(el, "looks"), template("template-class-look"), looks, (box, { sheet, look }) => {
    set_text(part(box, "who"), who(sheet));
    say_into(part(box, "said"), look.said);
    show_ways(part(box, "ways"), look.ways);
  });
  list(part(el, "rows"), template("template-class-sheet"), view.sheets, (row, sheet) => {
    set_text(part(row, "group"), sheet.group || t("class-unnamed"));
    set_text(part(row, "seat"), sheet.seat || "–");
    set_text(part(row, "right"), t("class-right-of", { right: sheet.right, asked: sheet.asked }));
    set_text(part(row, "points"), t("class-points-of", { points: num(sheet.points), max: num(sheet.max) }));
    const notes = [
      sheet.late ? t("class-late") : "",
      sheet.practice ? t("class-practice") : "",
      ...sheet.repairs.map((one) => say(one.label)),
    ];
    set_text(part(row, "notes"), notes.filter(Boolean).join(" · "));
  });
  list(part(el, "aside"), template("template-class-look"), view.aside, (box, one) => {
    set_text(part(box, "who"), [one.group, one.seat, one.receipt].filter(Boolean).join(" · "));
    say_into(part(box, "said"), one.said);
    show_ways(part(box, "ways"), one.ways);
  });
  toggle(part(el, "undo"), view.undo !== null);
}

function who(sheet: SheetRow): string {
  return [sheet.group || t("class-unnamed"), sheet.seat, sheet.receipt].filter(Boolean).join(" · ");
}

/** One sheet, answer by answer. */
export function show_seat(el: HTMLElement): void {
  const { view, seat } = class_book();
  const sheet = view.sheets.find((one) => one.key === seat);
  if (sheet === undefined) return;
  const sum = t("class-points-of", { points: num(sheet.points), max: num(sheet.max) });
  set_text(part(el, "title"), t("class-sheet-title", { who: who(sheet), sum }));
  set_value(by_id<HTMLInputElement>("class-group"), sheet.group);
  set_value(by_id<HTMLInputElement>("class-seat"), sheet.seat);
  by_id<HTMLInputElement>("class-late").checked = sheet.late;
  by_id<HTMLInputElement>("class-practice").checked = sheet.practice;
  show_ways(part(el, "repairs"), [...sheet.repairs, ...sheet.can], sheet.repairs.length);
  const texts = [...view.ready_comments.map(say), ...view.comments];
  const bank: Option[] = [["", t("class-comment-put")], ...texts.map((text): Option => [text, text])];
  toggle(part(el, "kept-box"), view.comments.length > 0);
  list(part(el, "kept"), template("template-class-kept"), view.comments, (row, text) => {
    set_text(part(row, "text"), text);
    part(row, "drop").dataset.text = text;
  });
  list(part(el, "answers"), template("template-class-answer"), sheet.answers, (card, answer) => {
    say_into(part(card, "ask"), answer.ask);
    say_into(part(card, "state"), answer.state);
    set_text(part(card, "given"), answer.given.map(say).join(" · "));
    set_text(part(card, "reason"), answer.reason);
    set_value(part<HTMLInputElement>(card, "points"), num(answer.points));
    const over = answer.points.value > answer.max.value ? "class-by-hand-over" : "class-by-hand";
    set_text(part(card, "max"), t(answer.by_hand ? over : "class-of-max", { max: num(answer.max) }));
    list(part(card, "levels"), template("template-class-level"), answer.levels, (label, one) => {
      set_text(part(label, "name"), one.name === null ? t("class-level") : say(one.name));
      const select = part<HTMLSelectElement>(label, "level");
      select.dataset.of = one.question;
      options(
        select,
        LEVELS.map(
          (id, at): Option => [at === 0 ? "" : String(at - 1), words_of_level(one.words[at - 1], at - 1) ?? t(id)],
        ),
      );
      set_value(select, one.level === null ? "" : String(one.level));
    });
    options(part(card, "bank"), bank);
    toggle(part(card, "keep"), answer.comment.trim() !== "" && !bank.some(([text]) => text === answer.comment.trim()));
    set_value(part<HTMLInputElement>(card, "why"), answer.why);
    set_value(part<HTMLInputElement>(card, "comment"), answer.comment);
  });
}
