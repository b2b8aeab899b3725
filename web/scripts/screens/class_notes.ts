// Class, the notes: what the teacher may say and ask at each step of the wall. They are never on the wall.

import { class_book } from "../class_state";
import { list, part, set_text, template, toggle } from "../dom";
import { say, say_into, t } from "../say";
import { said_of, type WallStep, wall_steps } from "./class_wall";

const ASK: Record<WallStep, string> = {
  guesses: "class-note-guesses",
  curves: "class-note-curves",
  marks: "class-note-marks",
  layers: "class-note-layers",
  middle: "class-note-middle",
  why: "class-note-why",
};

/** Wires the panel. */
export function mount_notes(el: HTMLElement): void {
  part(el, "print-notes").addEventListener("click", () => {
    document.documentElement.dataset.prints = "notes";
    print();
    delete document.documentElement.dataset.prints;
  });
}

/** The steps in their order, with what to ask; what is worth talking about stands beneath the step it belongs to. */
export function show_notes(el: HTMLElement): void {
  const { view } = class_book();
  list(part(el, "steps"), template("template-class-note"), wall_steps(), (item, step) => {
    set_text(part(item, "said"), said_of(step));
    set_text(part(item, "ask"), t(ASK[step]));
    const talk = step === "layers" ? view.talk : [];
    list(part(item, "talk"), template("template-class-talk"), talk, (one, said) => say_into(one, said));
  });
  const next = part(el, "next");
  toggle(next, view.next !== null);
  set_text(next, view.next === null ? "" : say(view.next));
}
