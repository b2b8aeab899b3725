// Reading aloud, only by a voice that the browser says is on the device: any other would send the words away.

import { set_text, toggle } from "./dom";
import { type Lang, language, t } from "./say";

/** A voice of this language that is on the device. */
function voice_of(lang: Lang): SpeechSynthesisVoice | null {
  if (typeof speechSynthesis === "undefined") return null;
  const ours = speechSynthesis.getVoices().filter((one) => one.localService && one.lang.split(/[-_]/)[0] === lang);
  return ours.find((one) => one.default) ?? ours[0] ?? null;
}

let reading: HTMLElement | null = null;

/** Makes a button read what `words` gives, and stop; without a voice of the device it is not there. */
export function mount_read_aloud(button: HTMLElement, words: () => readonly string[]): void {
  if (typeof speechSynthesis === "undefined") return;
  // Voices come a moment after the page.
  speechSynthesis.addEventListener("voiceschanged", () => show_read_aloud(button));
  addEventListener("pagehide", () => speechSynthesis.cancel());
  button.addEventListener("click", () => {
    const stops = reading === button;
    reading = null;
    speechSynthesis.cancel();
    const voice = voice_of(language());
    if (!stops && voice !== null) {
      reading = button;
      const said = new SpeechSynthesisUtterance(words().join("\n"));
      said.voice = voice;
      said.lang = voice.lang;
      const ended = () => {
        if (reading === button) reading = null;
        show_read_aloud(button);
      };
      said.addEventListener("end", ended);
      said.addEventListener("error", ended);
      speechSynthesis.speak(said);
    }
    show_read_aloud(button);
  });
}

/** The words of the button, and whether it is there. */
export function show_read_aloud(button: HTMLElement): void {
  toggle(button, voice_of(language()) !== null);
  set_text(button, t(reading === button ? "word-read-stop" : "word-read"));
}
