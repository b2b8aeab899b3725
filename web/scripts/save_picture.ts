// "Save the picture": the picture of a screen as an SVG file with its fonts inside; and the same for the fingers.

import { touch } from "./core";
import { save_file } from "./files";
import type { Picture } from "./picture";
import { t } from "./say";
import { state } from "./state";

/** Offers the picture as a file named after the notebook. */
export function save_picture(picture: Picture): void {
  offer(picture.as_svg(), "");
}

/** Offers the profile as a page to be raised: thick lines and braille numbers. */
export function save_touch(): void {
  const { notebook } = state();
  offer(touch(notebook, t("page-touch-head"), t("page-readings-depth"), t("page-touch-temperature")), "-touch");
}

function offer(svg: string, behind: string): void {
  save_file(`${state().look.file_name}${behind}.svg`, svg, "image/svg+xml");
}
