// What the build writes into the data blocks comes out again. The sample is the one of `crates/xtask/src/page/html.rs`.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bytes_of_signs } from "./inlined";

const SIGNS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(0x21 + i)).filter(
  (sign) => !"<>&".includes(sign),
);

/** Bytes as the build writes them. */
export function signs_of(bytes: Uint8Array): string {
  let text = `${bytes.length} `;
  let [held, bits] = [0, 0];
  const two = (value: number) => SIGNS[Math.floor(value / 91)] + SIGNS[value % 91];
  for (const byte of bytes) {
    held |= byte << bits;
    bits += 8;
    if (bits < 13) continue;
    text += two(held & 0x1fff);
    held >>= 13;
    bits -= 13;
  }
  return bits > 0 ? text + two(held) : text;
}

test("a data block gives back its bytes", () => {
  assert.equal(new TextDecoder().decode(bytes_of_signs("7 _|+:p9:f!)")), "Quillet");
  assert.equal(signs_of(new TextEncoder().encode("Quillet")), "7 _|+:p9:f!)");
  for (let length = 0; length < 60; length += 1) {
    const bytes = Uint8Array.from({ length }, (_, i) => (i * 151 + length * 7) % 256);
    assert.deepEqual(bytes_of_signs(signs_of(bytes)), bytes);
  }
});
