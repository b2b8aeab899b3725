// The profile as a sound, made here: the pitch is the temperature, and falls as the cursor sinks.

import { hear } from "./core";
import { set_text } from "./dom";
import { t } from "./say";
import { set_ui, state } from "./state";

/** How loud, of one; and how long it takes to come and to go, seconds. */
const LOUD = 0.2;
const SOFT_S = 0.03;

/** What sounds now. */
let playing: { stop(): void } | null = null;

/** Makes a button play the profile of the notebook in hand, and stop it. */
export function mount_hear(button: HTMLElement): void {
  button.addEventListener("click", () => {
    if (playing === null) playing = play(() => show_hear(button));
    else playing.stop();
    show_hear(button);
  });
}

/** The words of the button. */
export function show_hear(button: HTMLElement): void {
  set_text(button, t(playing === null ? "page-readings-hear" : "page-readings-hear-stop"));
}

function play(ended: () => void): { stop(): void } | null {
  const tones = triples(hear(state().notebook));
  const last = tones.at(-1);
  if (last === undefined) return null;
  const audio = new AudioContext();
  const voice = new OscillatorNode(audio, { type: "triangle", frequency: tones[0]?.hz ?? 440 });
  const loud = new GainNode(audio, { gain: 0 });
  voice.connect(loud).connect(audio.destination);
  const start_s = audio.currentTime + 0.1;
  const end_s = start_s + last.at_s + 0.4;
  for (const { at_s, hz } of tones) {
    const passed_s = start_s + at_s;
    if (at_s > 0) voice.frequency.exponentialRampToValueAtTime(hz, passed_s);
    else voice.frequency.setValueAtTime(hz, passed_s);
    // Each reading is a small swell, so that depth can be counted.
    loud.gain.setTargetAtTime(LOUD, passed_s, SOFT_S);
    loud.gain.setTargetAtTime(LOUD / 2, passed_s + 0.08, SOFT_S);
  }
  loud.gain.setTargetAtTime(0, end_s - 0.2, SOFT_S);
  voice.start(start_s);
  voice.stop(end_s);

  // The cursor goes by the page's own clock: where no sound can be made, it sinks all the same.
  const began_ms = performance.now() + 100;
  let frame = requestAnimationFrame(sink);
  function sink(): void {
    const passed_s = (performance.now() - began_ms) / 1000;
    const row = tones.findLast((tone) => tone.at_s <= passed_s)?.row;
    const reading = state().look.readings.findIndex((one) => one.row === row);
    if (reading >= 0 && reading !== state().ui.cursor) set_ui({ cursor: reading });
    if (passed_s < end_s - start_s) frame = requestAnimationFrame(sink);
    else stop();
  }
  function stop(): void {
    cancelAnimationFrame(frame);
    void audio.close();
    playing = null;
    ended();
  }
  return { stop };
}

function triples(flat: Float64Array): { at_s: number; hz: number; row: number }[] {
  const tones: { at_s: number; hz: number; row: number }[] = [];
  for (let n = 0; n + 2 < flat.length; n += 3) {
    tones.push({ at_s: flat[n] ?? 0, hz: flat[n + 1] ?? 0, row: flat[n + 2] ?? 0 });
  }
  return tones;
}
