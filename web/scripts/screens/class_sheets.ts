// Class, the sheets: what must be looked at with its ways out, every sheet with its points, and one sheet answer by answer.

import type { AnswerRow, ClassAction, ClassWay, SheetRow } from "../../generated/core";
import { class_book, class_do, set_class } from "../class_state";
import { by_id, list, part, set_text, set_value, template, toggle } from "../dom";
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
    if (!(target instanceof HTMLInputElement)) return;
    const card = target.closest<HTMLElement>(".card");
    const { sheet, answer } = answer_of(seat, card);
    if (sheet === undefined || answer === undefined) return;
    const [member_key, question, text] = [sheet.key, answer.question, target.value];
    if (target.dataset.part === "points") class_do({ do: "set_points", member: member_key, question, text });
    if (target.dataset.part === "why") class_do({ do: "set_why", member: member_key, question, text });
    if (target.dataset.part === "comment") class_do({ do: "set_comment", member: member_key, question, text });
  });
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

/** What each button of a row does. */
const ways = new WeakMap<Element, ClassAction>();

function show_ways(el: Element, all: readonly ClassWay[]): void {
  list(el, template("template-class-way"), all, (button, way) => {
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
  show_ways(part(el, "repairs"), [...sheet.repairs, ...sheet.can]);
  list(part(el, "answers"), template("template-class-answer"), sheet.answers, (card, answer) => {
    say_into(part(card, "ask"), answer.ask);
    say_into(part(card, "state"), answer.state);
    set_text(part(card, "given"), answer.given.map(say).join(" · "));
    set_text(part(card, "reason"), answer.reason);
    set_value(part<HTMLInputElement>(card, "points"), num(answer.points));
    set_text(part(card, "max"), t("class-of-max", { max: num(answer.max) }));
    set_value(part<HTMLInputElement>(card, "why"), answer.why);
    set_value(part<HTMLInputElement>(card, "comment"), answer.comment);
  });
}
