// What leaves the Report screen: the hand-in, the printed page, the page as a file, the picture. All of it is made here.

import * as core from "../core";
import { part } from "../dom";
import { copy_as_text, save_file } from "../files";
import { page_file } from "../page_file";
import { page_svg } from "../picture";
import { t_into } from "../say";
import { state } from "../state";
import type { Page } from "./report_page";

/** The picture as pixels is so many times as large as in the page. */
const PNG_TIMES = 3;

/** Wires the panel. */
export function mount_report_files(panel: HTMLElement, page: Page): void {
  const press = (name: string, does: () => void): void => part(panel, name).addEventListener("click", does);
  const named = (ending: string): string => `${state().look.file_name}${ending}`;
  press("save", () => {
    const { notebook } = state();
    save_file(named("-hand-in.json"), core.hand_in_file(notebook));
    t_into(part(panel, "receipt"), "report-receipt", { code: core.receipt(notebook) });
  });
  press("copy", () => {
    const { notebook } = state();
    copy_as_text(core.hand_in_lines(notebook));
    t_into(part(panel, "receipt"), "report-receipt", { code: core.receipt(notebook) });
  });
  press("print", () => {
    page.ready();
    print();
  });
  press("save-page", () => {
    page.ready();
    save_file(named("-report.html"), file_of(page.el), "text/html");
  });
  press("save-table", () => save_file(named(".csv"), core.readings_table(state().notebook), "text/csv"));
  press("save-sidecar", () => {
    const table = named(".csv");
    save_file(`${table}-metadata.json`, core.readings_sidecar(table));
  });
  press("save-quality", () => save_file(named("-quality.csv"), core.quality_record(state().notebook), "text/csv"));
  press("save-svg", () => save_file(named(".svg"), page_svg(state(), true), "image/svg+xml"));
  press("save-png", () => void save_png(named(".png")));
}

/** The page as one file, with the hand-in as data. */
function file_of(page: HTMLElement): string {
  const copy = page.cloneNode(true) as HTMLElement;
  copy.removeAttribute("style");
  const data = document.createElement("script");
  data.type = "application/json";
  data.id = "layercast-hand-in";
  // Written so that it may stand in a page: no "<" is in it.
  data.textContent = core.hand_in_file(state().notebook);
  return page_file(title(page), document.querySelector("style")?.textContent ?? "", [copy, data]);
}

function title(page: HTMLElement): string {
  return [part(page, "title").textContent, part(page, "who").textContent].filter(Boolean).join(" · ");
}

/** The picture as pixels. */
async function save_png(name: string): Promise<void> {
  const url = URL.createObjectURL(new Blob([page_svg(state(), true)], { type: "image/svg+xml" }));
  try {
    const picture = new Image();
    picture.src = url;
    await picture.decode();
    const canvas = document.createElement("canvas");
    canvas.width = picture.naturalWidth * PNG_TIMES;
    canvas.height = picture.naturalHeight * PNG_TIMES;
    canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const made = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
    if (made) save_file(name, made, "image/png");
  } finally {
    URL.revokeObjectURL(url);
  }
}
