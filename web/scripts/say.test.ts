// Numbers and messages as the page writes them. Expected forms: Unicode CLDR's decimal signs for "en" and "es"; the true
// minus is our own rule (U+2212).

import assert from "node:assert/strict";
import { test } from "node:test";
import { gzipSync } from "node:zlib";
import { load_messages } from "./inlined";
import { signs_of } from "./inlined.test";
import { count, decimal_sign, num, say, set_language, t } from "./say";

const EN =
  "found = { $depth }\u00A0m deep\nrows =\n    { $n ->\n        [one] one row\n       *[other] { $n } rows\n    }\nsaid = You wrote <cell>{ $text }</cell>.\n";
const ES = "found = a { $depth }\u00A0m\n";

function page_in(languages: string[]): void {
  const block = (id: string) => signs_of(gzipSync(id === "messages-en" ? EN : ES));
  const stubs = {
    document: { getElementById: (id: string) => ({ textContent: block(id) }) },
    navigator: { languages },
  };
  for (const [name, value] of Object.entries(stubs))
    Object.defineProperty(globalThis, name, { value, configurable: true });
}

async function speaking(language: "en" | "es", region: string): Promise<void> {
  page_in([region]);
  await load_messages();
  set_language(language);
}

test("a number keeps its decimals, a real minus, and no grouping", async () => {
  await speaking("en", "en-US");
  assert.equal(num({ value: -1.25, decimals: 1 }), "\u22121.3");
  assert.equal(num({ value: 12345, decimals: 2 }), "12345.00");
  assert.equal(num({ value: -0.04, decimals: 1 }), "0.0");
});

test("the decimal sign is that of the reader's region", async () => {
  await speaking("es", "es-ES");
  assert.equal(num({ value: 3.75, decimals: 2 }), "3,75");
  assert.equal(decimal_sign(), ",");
  await speaking("es", "es-MX");
  assert.equal(num({ value: 3.75, decimals: 2 }), "3.75");
});

test("a message has its number in the reader's form", async () => {
  await speaking("es", "es-ES");
  assert.equal(say({ id: "found", args: { depth: { kind: "number", value: 4, decimals: 1 } } }), "a 4,0\u00A0m");
});

test("a count chooses its plural", async () => {
  await speaking("en", "en-GB");
  assert.equal(t("rows", { n: 1 }), "one row");
  assert.equal(t("rows", { n: 20 }), "20 rows");
  assert.equal(count(7), "7");
});

test("an argument cannot make a mark, nor lose its own signs", async () => {
  await speaking("en", "en-GB");
  const text = "<b>1O.5</b> & <script>";
  assert.equal(say({ id: "said", args: { text: { kind: "text", text } } }), `You wrote ${text}.`);
});

test("an unknown message shows its id, never nothing", async () => {
  await speaking("en", "en-GB");
  assert.equal(t("no-such-words"), "no-such-words");
});
