// The fonts of the look: three files inside the page, each loaded once. Pictures can ask for a family but not for a
// weight, so each weight they use is a family of its own from the same bytes.

interface Face {
  block: string;
  family: string;
  weight: string;
  style: "normal" | "italic";
}

const FACES: readonly Face[] = [
  { block: "font-sans", family: "Plex Sans", weight: "100 700", style: "normal" },
  { block: "font-sans", family: "Plex Sans 500", weight: "500", style: "normal" },
  { block: "font-sans", family: "Plex Sans 600", weight: "600", style: "normal" },
  { block: "font-sans", family: "Plex Sans 700", weight: "700", style: "normal" },
  { block: "font-serif", family: "Source Serif", weight: "200 900", style: "normal" },
  { block: "font-serif-italic", family: "Source Serif", weight: "200 900", style: "italic" },
];

function base64(block: string): string {
  return document.getElementById(block)?.textContent?.trim() ?? "";
}

/** Hands every face to the document; `document.fonts.ready` tells when they can be drawn with. */
function load(): void {
  const bytes = new Map<string, ArrayBuffer>();
  for (const face of FACES) {
    let file = bytes.get(face.block);
    if (!file) {
      file = Uint8Array.from(atob(base64(face.block)), (sign) => sign.charCodeAt(0)).buffer;
      bytes.set(face.block, file);
    }
    const font = new FontFace(face.family, file, { weight: face.weight, style: face.style });
    document.fonts.add(font);
    // A browser that refuses the bytes shows the system's font instead.
    font.load().catch(() => document.fonts.delete(font));
  }
}

load();

/** A saved picture with the fonts it uses inside, so that it looks the same on any computer. */
export function with_fonts(svg: string): string {
  const rules = FACES.filter((face) => face.weight.includes(" ") && uses(svg, face)).map(
    (face) =>
      `@font-face{font-family:"${face.family}";font-weight:${face.weight};font-style:${face.style};` +
      `src:url(data:font/woff2;base64,${base64(face.block)}) format("woff2")}`,
  );
  return svg.replace("</title>", `</title>\n<style>${rules.join("")}</style>`);
}

function uses(svg: string, face: Face): boolean {
  return svg.includes(face.family) && (face.style === "normal" || svg.includes('font-style="italic"'));
}
