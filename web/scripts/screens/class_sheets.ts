// Class, the sheets: what must be looked at with its ways out, every sheet with its points, and one sheet answer by answer.

import type {
  AnswerRow,
  AnswerTold,
  ClassAction,
  ClassWay,
  LevelRow,
  PartTold,
  SheetRow,
  TryTold,
} from "../../generated/core";
import { class_book, class_do, set_class } from "../class_state";
import { class_told } from "../core";
import { by_id, list, part, set_attr, set_text, set_value, template, toggle } from "../dom";
import { num, say, say_into, t } from "../say";
import { show } from "../state";

/** Wires both panels. */
export function mount_sheets(sheets: HTMLElement, seat: HTMLElement): void {
  for (const el of [sheets, seat]) {
    el.addEventListener("click", ({ target }) => {
      const button = target instanceof Element ? target.closest<HTMLElement>("button[data-way]") : null;
      const action = button === null ? undefined : ways.get(button);
      if (action === undefined) return;
      class_do(action);
      // A sheet that was taken out is among those that stand aside.
      if (el === seat && class_book().panel !== "seat") part(sheets, "title").focus();
    });
  }
  part(sheets, "looks").addEventListener("change", ({ target }) => {
    const member = target instanceof HTMLInputElement ? target.dataset.of : undefined;
    if (member === undefined || !(target instanceof HTMLInputElement)) return;
    class_do({ do: "set_seat", member, text: target.value });
    part(sheets, "title").focus();
  });
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
    if (action === null) return;
    const { text: before } = class_book();
    refused = null;
    class_do(action);
    // Points that are no number change nothing: said beside the field, which has the old ones again.
    if (action.do === "set_points" && action.text.trim() !== "" && class_book().text === before) {
      const now = class_book().view.sheets.find((one) => one.key === sheet.key);
      const same = now?.answers.find((one) => one.question === answer.question);
      if (same !== undefined && !(same.by_hand && same_number(action.text, same.points.value))) {
        refused = { key: sheet.key, question: answer.question, text: action.text };
        show();
      }
    }
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

/** The level that a text was given, by the name it was chosen by. */
export function level_given(one: LevelRow): string {
  if (one.level === null) return "";
  const name = one.name === null ? t("class-level") : say(one.name);
  const id = LEVELS[one.level + 1] ?? LEVELS[0];
  return `${name} ${words_of_level(one.words[one.level], one.level) ?? t(id)}`;
}

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
    const field = part<HTMLInputElement>(box, "seat");
    toggle(part(box, "give"), look.at === "no_seat");
    if (field.dataset.of !== sheet.key) field.value = "";
    field.dataset.of = sheet.key;
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
      sheet.unasked === null ? "" : say(sheet.unasked),
      ...sheet.repairs.map((one) => say(one.label)),
    ];
    set_text(part(row, "notes"), notes.filter(Boolean).join(" · "));
  });
  list(part(el, "aside"), template("template-class-look"), view.aside, (box, one) => {
    set_text(part(box, "who"), [one.group, one.seat, one.receipt].filter(Boolean).join(" · "));
    say_into(part(box, "said"), one.said);
    toggle(part(box, "give"), false);
    show_ways(part(box, "ways"), one.ways);
  });
  show_undo(part(el, "undo"));
}

/** The button that takes the last step back, and says which. */
export function show_undo(button: HTMLElement): void {
  const { undo } = class_book().view;
  toggle(button, undo !== null);
  if (undo !== null) say_into(button, undo.label);
}

function who(sheet: SheetRow): string {
  return [sheet.group || t("class-unnamed"), sheet.seat, sheet.receipt].filter(Boolean).join(" · ");
}

/** Points that were typed and are none. */
let refused: { key: string; question: string; text: string } | null = null;

function same_number(text: string, value: number): boolean {
  return Number(text.trim().replace(",", ".")) === value;
}

let told: { text: string; key: string; answers: AnswerTold[] } | null = null;

/** What a sheet is marked by, worked out once a change. */
function told_of(key: string): AnswerTold[] {
  const { text } = class_book();
  if (told === null || told.text !== text || told.key !== key) told = { text, key, answers: class_told(text, key) };
  return told.answers;
}

/** What is right in a part, what else counts, and each try with the idea it shows. */
function show_told(line: HTMLElement, one: PartTold): void {
  set_text(part(line, "right"), one.right === null ? "" : t("class-told-right", { said: say(one.right) }));
  set_text(part(line, "fits"), one.fits === null ? "" : say(one.fits));
  const tries = one.tries.map(said_try).join("; ");
  const tried = tries === "" ? t("class-told-none") : t("class-told-tries", { tries });
  set_text(part(line, "tries"), one.right === null ? "" : tried);
}

function said_try(one: TryTold): string {
  const given = one.given.map(say).join(" · ");
  const taken = say(one.taken);
  if (given === "") return t("class-told-cannot", { taken });
  return one.idea === null
    ? t("class-told-try", { given, taken })
    : t("class-told-try-idea", { given, taken, idea: say(one.idea) });
}

/** One sheet, answer by answer. */
export function show_seat(el: HTMLElement): void {
  const { view, seat } = class_book();
  const sheet = view.sheets.find((one) => one.key === seat);
  if (sheet === undefined) return;
  show_undo(part(el, "undo"));
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
  toggle(part(el, "unasked"), sheet.unasked !== null);
  set_text(part(el, "unasked"), sheet.unasked === null ? "" : say(sheet.unasked));
  const beside = told_of(sheet.key);
  list(part(el, "answers"), template("template-class-answer"), sheet.answers, (card, answer) => {
    const parts = beside.find((one) => one.question === answer.question)?.parts ?? [];
    list(part(card, "told"), template("template-class-told"), parts, show_told);
    say_into(part(card, "ask"), answer.ask);
    say_into(part(card, "state"), answer.state);
    set_text(part(card, "given"), answer.given.map(say).join(" · "));
    set_text(part(card, "reason"), answer.reason);
    set_value(part<HTMLInputElement>(card, "points"), num(answer.points));
    const over = answer.points.value > answer.max.value ? "class-by-hand-over" : "class-by-hand";
    const no = refused !== null && refused.key === sheet.key && refused.question === answer.question;
    const not = no ? t("class-points-not", { text: refused?.text ?? "", points: num(answer.points) }) : "";
    const of = t(answer.by_hand ? over : "class-of-max", { max: num(answer.max) });
    const after = answer.after_shown === null ? "" : say(answer.after_shown);
    set_text(part(card, "max"), [[of, after].filter(Boolean).join(" · "), not].filter(Boolean).join(". "));
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
