// What the build puts into the page: the compiled calculation and the messages as packed data blocks, the fonts in the style sheet.

const texts = new Map<string, string>();

/** Unpacks the message files of every language; before this there are no words. */
export async function load_messages(): Promise<void> {
  for (const lang of ["en", "es"]) texts.set(lang, await unpacked(`messages-${lang}`).text());
}

/** The message files of a language, as one Fluent text. */
export function messages(lang: "en" | "es"): string {
  return texts.get(lang) ?? "";
}

let compiled: Promise<WebAssembly.Module> | null = null;

/** The compiled calculation. */
export function wasm_module(): Promise<WebAssembly.Module> {
  compiled ??= unpacked("wasm")
    .arrayBuffer()
    .then((bytes) => WebAssembly.compile(bytes));
  return compiled;
}

/** The script of the worker. */
export function worker_script(): Promise<string> {
  return unpacked("worker").text();
}

/** A data block is gzip, written as signs. */
function unpacked(id: string): Response {
  const packed = bytes_of_signs(block(id));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip")));
}

/** Weights that pictures ask for by a family of their own: a canvas is asked for a family, never for a weight. */
const OWN_WEIGHTS: readonly (readonly [family: string, weight: string])[] = [
  ["Plex Sans", "500"],
  ["Plex Sans", "600"],
  ["Plex Sans", "700"],
  ["Source Serif", "600"],
];

/** Loads every face of the look, and declares the families of single weights from the same file. */
export async function load_fonts(): Promise<void> {
  for (const [family, weight] of OWN_WEIGHTS) {
    const src = source_of(family);
    if (src) document.fonts.add(new FontFace(`${family} ${weight}`, src, { weight }));
  }
  await Promise.all([...document.fonts].map((face) => face.load())).catch(() => {});
}

/** Where the upright face of a family is read from. */
function source_of(family: string): string {
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSFontFaceRule)) continue;
      const { style } = rule;
      const named = style.getPropertyValue("font-family").includes(family);
      if (named && style.getPropertyValue("font-style") !== "italic") return style.getPropertyValue("src");
    }
  }
  return "";
}

function block(id: string): string {
  return document.getElementById(id)?.textContent ?? "";
}

/** What `crates/xtask/src/page/html.rs` writes: the number of bytes, a space, then each 13 bits as two of 91 signs. */
export function bytes_of_signs(text: string): Uint8Array<ArrayBuffer> {
  const values = new Uint8Array(128);
  let value = 0;
  for (let sign = 0x21; sign < 0x7f; sign += 1) if (!"<>&".includes(String.fromCharCode(sign))) values[sign] = value++;
  const digit = (at: number): number => values[text.charCodeAt(at) & 127] ?? 0;
  const start = text.indexOf(" ") + 1;
  const bytes = new Uint8Array(Number(text.slice(0, start)));
  let held = 0;
  let bits = 0;
  let filled = 0;
  for (let at = start; filled < bytes.length && at < text.length; at += 2) {
    held |= (digit(at) * 91 + digit(at + 1)) << bits;
    for (bits += 13; bits >= 8; bits -= 8) {
      bytes[filled++] = held;
      held >>>= 8;
    }
  }
  return bytes;
}
