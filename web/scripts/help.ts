// Help is text in index.html; the script only fills in which page this is.

import { by_id, set_text } from "./dom";
import { t } from "./say";
import { on_show } from "./state";

/** Wires the menu. */
export function mount_help(): void {
  on_show((s) => {
    if (s.ui.menu === "help") set_text(by_id("help-about"), t("page-help-about"));
  });
}
