// What the build puts into the page as data blocks: the compiled calculation and the fonts, each as base64.

/** The compiled calculation: gzip inside the block. */
export async function wasm_module(): Promise<WebAssembly.Module> {
  const plain = new Blob([bytes_of("wasm")]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(plain).arrayBuffer());
}

/**
 * Declares the faces of the look. A picture can only ask for a family, never for a weight, so each weight of the sans is a
 * family of its own, made from the same bytes.
 */
export async function load_fonts(): Promise<void> {
  const sans = bytes_of("font-sans");
  const faces = [
    new FontFace("Plex Sans", sans, { weight: "100 700" }),
    new FontFace("Plex Sans 500", sans, { weight: "500" }),
    new FontFace("Plex Sans 600", sans, { weight: "600" }),
    new FontFace("Plex Sans 700", sans, { weight: "700" }),
    new FontFace("Source Serif", bytes_of("font-serif"), { weight: "200 900" }),
    new FontFace("Source Serif", bytes_of("font-serif-italic"), { weight: "200 900", style: "italic" }),
  ];
  for (const face of faces) {
    document.fonts.add(face);
  }
  await Promise.all(faces.map((face) => face.load())).catch(() => {});
}

/** The faces a picture asks for, as rules with the fonts inside: an SVG opened elsewhere cannot see the page's fonts. */
export function font_rules(): { family: string; rule: string }[] {
  const sans = ["400", "500", "600", "700"].map((weight) => ({
    family: weight === "400" ? "Plex Sans" : `Plex Sans ${weight}`,
    id: "font-sans",
    more: `font-weight:${weight}`,
  }));
  const all = [...sans, { family: "Source Serif", id: "font-serif-italic", more: "font-style:italic" }];
  return all.map(({ family, id, more }) => ({
    family,
    rule: `@font-face{font-family:"${family}";${more};src:url(data:font/woff2;base64,${text_of(id)}) format("woff2")}`,
  }));
}

function text_of(id: string): string {
  return document.getElementById(id)?.textContent?.trim() ?? "";
}

function bytes_of(id: string): Uint8Array<ArrayBuffer> {
  const text = text_of(id);
  const quick = Uint8Array as unknown as { fromBase64?: (text: string) => Uint8Array<ArrayBuffer> };
  if (quick.fromBase64) return quick.fromBase64(text);
  return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
}
