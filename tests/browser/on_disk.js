// Files as a person would have them on disk, to be chosen or dropped; and tables of any length.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { after, before } from "node:test";
import { start } from "./browser.js";

/** As many lines as wanted, each made from its number. */
export const rows = (count, row) => Array.from({ length: count }, (_, i) => row(i)).join("\n");

/** A folder of its own with these files in it: bytes or text by name. */
export class Folder {
  constructor(files) {
    this.path = mkdtempSync(path.join(tmpdir(), "layercast-files-"));
    for (const [name, bytes] of Object.entries(files)) this.write(name, bytes);
  }

  write(name, bytes) {
    writeFileSync(this.file(name), bytes);
  }

  /** Where a file lies. */
  file(name) {
    return path.join(this.path, name);
  }

  drop() {
    rmSync(this.path, { recursive: true, force: true });
  }
}

/** A browser and a folder with these files, from before the first test of a file to after the last. */
export function with_files(files) {
  const tools = { browser: null, folder: null };
  before(async () => {
    tools.browser = await start();
    tools.folder = new Folder(files);
  });
  after(async () => {
    await tools.browser.close();
    tools.folder.drop();
  });
  return tools;
}
