// "Save the picture": the picture of a screen as an SVG file with its fonts inside.

import type { Picture } from "./picture";
import { state } from "./state";

/** Offers the picture as a file named after the notebook. */
export function save_picture(picture: Picture): void {
  const file = new Blob([picture.as_svg()], { type: "image/svg+xml" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `${state().look.file_name}.svg`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
