// The states of the page, each reached from the first screen as a group would reach it. Pictures and the accessibility
// check go through all of them.

import * as steps from "./steps.js";

/** By name. */
export const STATES = {
  "first-open": async () => {},
  "two-cells-to-look-at": async (page) => {
    await steps.paste(page, steps.WITH_SLIPS);
    await page.until(() => document.querySelectorAll("#log-doubts .doubt").length > 1);
  },
  "one-question-first": async (page) => {
    await steps.paste(page, "Depth\tTemp\n0\t74.3\n3\t74.1\n6\t73.8\n9\t71.2\n12\t62.0\n15\t54.4\n18\t50.2\n21\t48.9\n");
    await page.until(() => document.getElementById("log-pending")?.checkVisibility());
  },
  "a-table-on-the-way": async (page) => {
    await steps.paste(page, steps.WITH_SLIPS);
    await page.push("#log-reopen");
    await page.until(() => document.getElementById("log-pending")?.checkVisibility());
  },
  "leg-unknown": async (page) => {
    await steps.paste(page, "Depth (m),Temp (°C)\n0,18.1\n1,18.0\n2,16.2\n3,12.5\n4,10.1\n5,9.6\n6,9.5\n");
    await page.until(() => document.getElementById("log-leg")?.checkVisibility());
  },
  "not-a-table": async (page) => {
    await steps.paste(page, "the\tpond\twas\ncold\tand\tgreen\n");
    await page.until(() => document.getElementById("log-pending")?.checkVisibility());
  },
  "pasting": async (page) => {
    await page.push("#log-paste");
    await page.until(() => document.getElementById("paste-field")?.checkVisibility());
  },
  "corrections": async (page) => {
    await steps.paste(page, steps.WITH_SLIPS);
    await page.push("#log-to-corrections");
    for (const [way, texts] of [[1, ["0.6"]], [4, ["5", "8", "15"]], [5, ["0.3 m"]]]) {
      await page.push(`#corrections-ways button:nth-child(${way})`);
      for (const text of texts) {
        await page.type(text);
        await page.press("Tab");
      }
    }
    await page.until(() => document.querySelectorAll("#corrections-list .doubted").length > 1);
  },
  "corrected": async (page) => {
    await steps.open_example(page, "layered-summer");
    await page.push("#log-to-corrections");
    await page.push("#corrections-ways button:first-child");
    await page.type("0.6");
    await page.push("#corrections-done");
    await page.until(() => document.getElementById("log-corrected")?.innerText.match(/0[.,]6/));
  },
  "oxygen-and-secchi": async (page) => {
    await steps.paste(page, steps.WITH_OXYGEN);
    await page.push("#log-to-companions");
    await page.until(() => document.getElementById("companions-rows")?.checkVisibility());
  },
  "by-hand": async (page) => {
    await steps.open_example(page, "layered-summer");
    await page.push("#log-to-by-hand");
    await page.push('#by-hand-rows [data-point="0"]');
    for (const key of ["ArrowUp", "ArrowRight"]) await page.press(key);
    await page.run(() => document.querySelector("#log-picture").dispatchEvent(new MouseEvent("click", { clientX: 200, clientY: 300 })));
    await page.run(() => document.querySelector("#log-picture").dispatchEvent(new MouseEvent("click", { clientX: 260, clientY: 400 })));
    await page.push("#by-hand-check");
  },
  "guess-first": async (page) => {
    await steps.guess(page);
  },
  "guess-in-the-report": async (page) => {
    await steps.guess(page);
    await page.push("#guess-done");
    await steps.paste(page, steps.WITH_OXYGEN);
    await page.until(() => document.getElementById("log-main")?.checkVisibility());
    await steps.go(page, "report");
  },
  "own-words": async (page) => {
    await steps.paste(page, steps.LESSON_OF_GROUPS);
    await page.push("#lesson-take");
    await steps.paste(page, steps.WITH_OXYGEN);
    await page.until(() => document.getElementById("log-main")?.checkVisibility());
    await steps.go(page, "questions");
  },
  "another-group": async (page) => {
    await steps.open_example(page, "layered-summer");
    await page.push("#log-to-other");
  },
  "notebooks": async (page) => {
    await steps.open_example(page, "layered-summer");
    await page.push("#bar-water");
  },
  "erase-asks": async (page) => {
    await steps.open_example(page, "layered-summer");
    await page.push("#bar-water");
    await page.push("#notebooks-erase");
  },
  "view": async (page) => {
    await page.push("#bar-view");
  },
  "help": async (page) => {
    await page.push("#bar-help");
  },
  "how-it-is-computed": async (page) => {
    await page.push("#bar-help");
    await page.push("#help-how");
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

/** A state that is one step on from where others begin too: who goes through all of them takes that way once. */
function on(base, step) {
  const reach = async (page) => {
    await base(page);
    await step(page);
  };
  return Object.assign(reach, { base, step });
}

async function summer(page) {
  await to_profile(page, "layered-summer");
}

// The marks, from the first look to what was found and the doors behind it.
STATES["no-marks-yet"] = on(summer, async () => {});

STATES["readings-as-a-table"] = on(summer, (page) => page.push('#profile-panel .marking [data-part="to-table"]'));

STATES["report-not-checked"] = on(summer, (page) => steps.go(page, "report"));

STATES["partner-covered"] = async (page) => {
  await summer(page);
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await page.push('#profile-panel [data-part="partner-ways"] button');
  await page.until(() => document.querySelector('#profile-panel [data-part="partner"]')?.checkVisibility());
};

STATES["early-check-asks"] = async (page) => {
  await summer(page);
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await page.push('#profile-panel .marking [data-part="acts"] .go');
  await page.until(() => document.querySelector('[data-part="early"]')?.checkVisibility());
};

STATES["your-marks"] = async (page) => {
  await summer(page);
  await steps.place_marks(page, ["2.5", "4", "6"]);
};

STATES["what-was-found"] = on(STATES["your-marks"], steps.check_marks);

/** Goes through a door of what was found; from behind another one it goes back first. */
async function door(page, name) {
  const at = `#profile-panel .found-panel [data-part="${name}"]`;
  await page.run((to) => {
    if (document.querySelector(to)?.checkVisibility()) return;
    [...document.querySelectorAll('#profile-panel [data-part="to-found"]')].find((one) => one.checkVisibility()).click();
  }, at);
  await page.until((to) => document.querySelector(to)?.checkVisibility(), at);
  await page.push(at);
}

STATES["other-rules"] = on(STATES["what-was-found"], (page) => door(page, "to-rules"));

STATES["how-sure"] = on(STATES["what-was-found"], async (page) => {
  await door(page, "to-sure");
  await page.until(() => document.querySelectorAll("#profile-panel .door-panel .doorlist .own").length > 0);
});

STATES["read-otherwise"] = on(STATES["what-was-found"], async (page) => {
  await door(page, "to-otherwise");
  await steps.choose_in_list(page, '#profile-panel [name="marks"]', "every_2_metres");
  await page.until(() => document.querySelectorAll("#profile-panel .door-panel .doorlist td").length > 0);
});

STATES["how-hard-to-mix"] = on(STATES["what-was-found"], (page) => door(page, "to-mixing"));

STATES["report-written"] = on(STATES["what-was-found"], async (page) => {
  await steps.go(page, "report");
  await steps.write_report(page);
});

// Questions, one by one.
async function questions(page) {
  await to_profile(page, "layered-summer");
  await steps.place_marks(page, ["2.5", "4", "6"]);
  await steps.go(page, "questions");
}

for (let number = 1; number <= 8; number += 1) {
  STATES[`question-${number}`] = on(questions, (page) => steps.go_to_question(page, number));
}

// The longest sums: a depth between two marks, the mean of what two ways differ by.
STATES["mixed-layer-right"] = on(questions, async (page) => {
  await steps.go_to_question(page, 5);
  await steps.answer(page, { temp: "22.4", from: "2.5", to: "3", depth: "2.7" });
  await steps.press_button(page);
  await page.until(() => document.querySelector("#questions-panel .part .sum")?.checkVisibility());
});

STATES["two-ways-shown"] = on(questions, async (page) => {
  await steps.go_to_question(page, 8);
  for (let press = 0; press < 4; press += 1) await steps.press_button(page, 1);
});

STATES["all-hints"] = on(questions, async (page) => {
  await steps.go_to_question(page, 3);
  for (let hint = 0; hint < 3; hint += 1) await steps.press_button(page, 1);
});

STATES["shown"] = on(STATES["all-hints"], (page) => steps.press_button(page, 1));

STATES["questions-of-mixed-water"] = async (page) => {
  await to_profile(page, "mixed-autumn");
  await steps.place_marks(page, [null, null, null]);
  await steps.go(page, "questions");
};

async function to_profile(page, example) {
  await steps.open_example(page, example);
  await steps.to_profile(page);
}

// Class, from what a teacher drops: one sheet with words to be marked, the answers, why two differ, the wall.
STATES["class-sheet"] = async (page) => {
  await steps.go(page, "class");
  await steps.drop(page, [steps.hand_in_with_report("The steepest part lies at 4.25 m.")]);
  await page.push('#class-panel [data-view="add"] [data-part="to-sheets"]');
  await page.push('#class-panel [data-view="sheets"] [data-part="rows"] tr:first-child button');
  await page.until(() => document.getElementById("class-seat")?.checkVisibility());
};

async function class_picture(page) {
  await steps.drop_hand_ins(page);
  await page.push('#class-panel [data-view="add"] [data-part="to-list"]');
}

/** Presses what stands beside the class's picture; from another panel of the class it goes back there first. */
async function beside_picture(page, name) {
  const at = `#class-panel [data-view="list"] [data-part="${name}"]`;
  await page.run((to) => {
    if (document.querySelector(to).checkVisibility()) return;
    [...document.querySelectorAll('#class-panel [data-part="to-list"]')].find((one) => one.checkVisibility()).click();
  }, at);
  await page.push(at);
}

STATES["class-answers"] = on(class_picture, (page) => beside_picture(page, "to-answers"));

STATES["class-why"] = on(class_picture, async (page) => {
  await beside_picture(page, "to-why");
  await page.until(() => document.querySelectorAll('#class-panel [data-part="causes"] tr').length > 3);
});

STATES["class-marks"] = on(class_picture, (page) => beside_picture(page, "to-marks"));

STATES["class-wall"] = on(class_picture, async (page) => {
  await beside_picture(page, "wall");
  await page.until(() => document.getElementById("class-wall-said")?.checkVisibility());
});
