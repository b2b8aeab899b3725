// Pictures of the page in its states. `node shots.js FOLDER [all]`: those of the README, or every state in four themes and
// at three sizes, to look at.

import { mkdirSync } from "node:fs";
import path from "node:path";
import { start } from "./browser.js";
import * as steps from "./steps.js";

/** States, each reached as a group would reach it. */
const STATES = {
  "first-open": async () => {},
  "two-cells-to-look-at": async (page) => {
    await steps.paste(page, steps.WITH_SLIPS);
    await page.until(() => document.querySelectorAll("#log-doubts .doubt").length > 1);
  },
  "one-question-first": async (page) => {
    await steps.paste(page, "Depth\tTemp\n0\t74.3\n3\t74.1\n6\t73.8\n9\t71.2\n12\t62.0\n15\t54.4\n18\t50.2\n21\t48.9\n");
    await page.until(() => document.getElementById("log-pending")?.checkVisibility());
  },
  "your-marks": async (page) => {
    await to_profile(page, "layered-summer");
    await steps.place_marks(page, ["2.5", "4", "6"]);
  },
  "what-was-found": async (page) => {
    await to_profile(page, "layered-summer");
    await steps.place_marks(page, ["2.5", "4", "6"]);
    await steps.check_marks(page);
  },
  "no-thermocline": async (page) => {
    await to_profile(page, "mixed-autumn");
    await steps.place_marks(page, [null, null, null]);
    await steps.check_marks(page);
  },
  "under-ice": async (page) => {
    await to_profile(page, "under-ice");
    await steps.place_marks(page, [null, "2", null]);
    await steps.check_marks(page);
  },
  "a-question": async (page) => {
    await to_profile(page, "layered-summer");
    await steps.place_marks(page, ["2.5", "4", "6"]);
    await steps.go(page, "questions");
    await steps.go_to_question(page, 4);
    await steps.answer(page, { from: "3.5", to: "4", rate: "2.5" });
    await steps.press_button(page);
  },
};

async function to_profile(page, example) {
  await steps.open_example(page, example);
  await steps.to_profile(page);
}

const LAPTOP = { width: 1366, height: 600 };
const PHONE = { width: 390, height: 844, scale: 2, touch: true };
const WALL = { width: 1920, height: 1080 };

/** What the README shows. */
const README = ["first-open", "two-cells-to-look-at", "your-marks", "what-was-found", "no-thermocline", "a-question"].map(
  (state) => ({ state, ...LAPTOP, theme: "day", lang: "en", file: state }),
);

const ALL = Object.keys(STATES).flatMap((state) => [
  ...["day", "night"].map((theme) => ({ state, ...LAPTOP, theme, lang: "en", file: `${state}-${theme}` })),
  { state, ...WALL, theme: "sunlight", lang: "en", file: `${state}-sunlight` },
  { state, ...WALL, theme: "projector", lang: "en", file: `${state}-projector` },
  { state, ...PHONE, theme: "day", lang: "en", file: `${state}-phone` },
  { state, ...LAPTOP, theme: "day", lang: "es", file: `${state}-es` },
]);

const folder = process.argv[2];
const wanted = process.argv[3] === "all" ? ALL : README;
mkdirSync(folder, { recursive: true });
for (const { state, theme, lang, file, ...size } of wanted) {
  const browser = await start({ ...size, language: lang === "es" ? "es-ES" : "en-US" });
  try {
    const page = await browser.open();
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
    await browser.close();
  }
}
