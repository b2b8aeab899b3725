// Cuts a font down to the characters on standard input and the weights given. Prints the woff2, or with --lacks the
// characters that the font does not have.
//   node subset.js FONT LEAST_WEIGHT MOST_WEIGHT < characters
//   node subset.js --lacks FONT < characters
import { readFileSync } from "node:fs";
import subsetFont from "subset-font";

const args = process.argv.slice(2);
const lacks = args[0] === "--lacks";
const font = readFileSync(args[lacks ? 1 : 0]);
const characters = readFileSync(0, "utf8");

if (lacks) {
  const { convert } = await import("fontverter");
  const has = characters_of(await convert(font, "sfnt"));
  process.stdout.write([...characters].filter((c) => !has.has(c.codePointAt(0))).join(""));
} else {
  const [min, max] = [Number(args[1]), Number(args[2])];
  const variationAxes = { wght: min === max ? min : { min, max } };
  // Signs that only a feature of the font would put in place of others (small capitals, old-style figures) are left out.
  const options = { targetFormat: "woff2", variationAxes, noLayoutClosure: true };
  process.stdout.write(await subsetFont(font, characters, options));
}

/** Code points of an OpenType font, read from the formats 4 and 12 of its `cmap` table. */
function characters_of(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found = new Set();
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + 16 * i;
    if (view.getUint32(entry) !== 0x636d6170) continue;
    const cmap = view.getUint32(entry + 8);
    for (let j = 0; j < view.getUint16(cmap + 2); j++) {
      const table = cmap + view.getUint32(cmap + 4 + 8 * j + 4);
      if (view.getUint16(table) === 12) {
        for (let k = 0; k < view.getUint32(table + 12); k++) {
          const group = table + 16 + 12 * k;
          for (let c = view.getUint32(group); c <= view.getUint32(group + 4); c++) found.add(c);
        }
      } else if (view.getUint16(table) === 4) {
        const segments = view.getUint16(table + 6) / 2;
        for (let k = 0; k < segments; k++) {
          const end = view.getUint16(table + 14 + 2 * k);
          const start = view.getUint16(table + 16 + 2 * segments + 2 * k);
          for (let c = start; c <= end && c !== 0xffff; c++) found.add(c);
        }
      }
    }
  }
  return found;
}
