// Another group's cast, for the questions that compare with one: out of that group's file, or its pasted lines.

import type { Action } from "../../generated/core";
import { by_id, focus_seen, toggle } from "../dom";
import { say, say_into, speak, t } from "../say";
import { dispatch, type State, set_ui, state } from "../state";

/** Larger files hold more than one group's work. */
const LARGEST_BYTES = 20_000_000;

/** Wires the door. */
export function mount_log_other(): void {
  const file_field = by_id<HTMLInputElement>("log-other-file");
  const pasted = by_id<HTMLTextAreaElement>("log-other-pasted");
  by_id("log-to-other").addEventListener("click", () => {
    set_ui({ log_door: "other" });
    tell_no(false);
    by_id("log-other-title").focus();
  });
  by_id("log-other-done").addEventListener("click", () => {
    set_ui({ log_door: null });
    focus_seen(by_id("log-to-other"));
  });
  by_id("log-other-open").addEventListener("click", () => file_field.click());
  file_field.addEventListener("change", () => {
    const file = file_field.files?.[0];
    if (!file) return;
    const text = file.size > LARGEST_BYTES ? Promise.resolve("") : file.text();
    void text.then(take).finally(() => (file_field.value = ""));
  });
  by_id("log-other-take").addEventListener("click", () => {
    take(pasted.value);
    pasted.value = "";
  });
  by_id("log-other-remove").addEventListener("click", () => after({ do: "remove_other" }));
}

function take(text: string): void {
  const before = JSON.stringify(state().look.log.other);
  after({ do: "take_other", text }, () => tell_no(JSON.stringify(state().look.log.other) === before));
}

function after(action: Action, then: () => void = () => tell_no(false)): void {
  dispatch(action, () => {
    then();
    speak(by_id("log-other-no").hidden ? say(state().look.log.other[0]) : t("page-log-other-no"));
    if (by_id("log-other-remove").hidden) focus_seen(by_id("log-other-open"));
  });
}

function tell_no(no: boolean): void {
  toggle(by_id("log-other-no"), no);
}

/** Shows what is held. */
export function show_log_other({ look }: Readonly<State>): void {
  const [said, own] = look.log.other;
  say_into(by_id("log-other-said"), said);
  toggle(by_id("log-other-remove"), own);
}
