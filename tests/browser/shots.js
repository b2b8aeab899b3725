// Pictures of the page in its states. `node shots.js FOLDER [all [NAME]]`: those of the README, or every state (or those
// whose name holds NAME) in four themes and at three sizes, to look at.

import { mkdirSync } from "node:fs";
import path from "node:path";
import { start } from "./browser.js";
import { STATES } from "./states.js";
import * as steps from "./steps.js";

const LAPTOP = { width: 1366, height: 600 };
const PHONE = { width: 390, height: 844, scale: 2, touch: true };
const WALL = { width: 1920, height: 1080 };

/** What the README shows. */
const README = ["what-was-found", "two-cells-to-look-at", "a-question"].map((state) => ({
  state,
  ...LAPTOP,
  theme: "day",
  lang: "en",
  file: state,
}));

const ALL = Object.keys(STATES).flatMap((state) => [
  ...["day", "night"].map((theme) => ({ state, ...LAPTOP, theme, lang: "en", file: `${state}-${theme}` })),
  { state, ...WALL, theme: "sunlight", lang: "en", file: `${state}-sunlight` },
  { state, ...WALL, theme: "projector", lang: "en", file: `${state}-projector` },
  { state, ...PHONE, theme: "day", lang: "en", file: `${state}-phone` },
  { state, ...LAPTOP, theme: "day", lang: "es", file: `${state}-es` },
]);

const folder = process.argv[2];
const only = process.argv[4];
const wanted = (process.argv[3] === "all" ? ALL : README).filter((one) => only === undefined || one.file.includes(only));
mkdirSync(folder, { recursive: true });
for (const lang of new Set(wanted.map((one) => one.lang))) {
  const browser = await start({ language: lang === "es" ? "es-ES" : "en-US" });
  for (const one of wanted.filter((shot) => shot.lang === lang)) await take(browser, one);
  await browser.close();
}

/** One picture, in a store of its own. */
async function take(browser, { state, theme, file, width, height, scale = 1, touch = false }) {
  const page = await browser.apart({ width, height, deviceScaleFactor: scale, hasTouch: touch });
  page.hurry = true;
  try {
    await page.go();
    if (theme !== "day") await steps.choose_in_view(page, "theme", theme);
    await STATES[state](page);
    // The cover has slid off, the clock stands still.
    await page.run(() => new Promise((done) => setTimeout(done, 700)));
    await page.run(() => scrollTo(0, 0));
    await page.shot(path.join(folder, `${file}.png`));
    console.log(`${file}.png`);
  } catch (error) {
    console.error(`${file}: ${error.message}`);
    process.exitCode = 1;
  } finally {
    await page.close();
  }
}
