// What of a question is spoken: verdicts and hints once they come, all of it when it is read aloud.

import type { QuestionView } from "../../generated/core";
import { say } from "../say";

/** The verdicts of these parts. */
export function verdicts(current: QuestionView, of: readonly number[]): string {
  return of
    .map((index) => current.parts[index]?.verdict ?? null)
    .flatMap((verdict) => (verdict === null ? [] : [say(verdict.said)]))
    .join(" ");
}

/** Everything of a question that a voice reads. */
export function read_out(current: QuestionView): string[] {
  const all = current.parts.map((_, index) => index);
  return [say(current.ask), ...current.lead.map(say), verdicts(current, all), last_hint(current)].filter(Boolean);
}

/** The hint that was opened last. */
export function last_hint(current: QuestionView): string {
  const hint = current.parts.flatMap((one) => one.hints).at(-1);
  if (hint === undefined) return "";
  const sum = hint.sum.map((line) => `${say(line.left)} ${say(line.right)}, ${say(line.gloss)}`);
  return [say(hint.head), ...(hint.said === null ? [] : [say(hint.said)]), ...sum].join(". ");
}
