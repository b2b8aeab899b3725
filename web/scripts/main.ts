// Starts the page: fonts, calculation, store, the notebook that was open; then every part wires itself.

import { mount_bar } from "./bar";
import { mount_busy } from "./busy";
import { start_core } from "./core";
import { by_id } from "./dom";
import { mount_files } from "./files";
import { mount_help } from "./help";
import { mount_how } from "./how";
import { load_fonts, load_messages } from "./inlined";
import { mount_notebooks, open_first } from "./notebooks";
import { mount_ranges } from "./ranges";
import { mount_class } from "./screens/class";
import { mount_log } from "./screens/log";
import { mount_profile } from "./screens/profile";
import { mount_questions } from "./screens/questions";
import { mount_report } from "./screens/report";
import { mount_table_view } from "./screens/table_view";
import { fresh_ui, show } from "./state";
import { open_storage } from "./storage";
import { mount_trouble } from "./trouble";
import { apply_view, first_view, mount_view_menu } from "./view_menu";
import { mount_words } from "./words";

async function start(): Promise<void> {
  await load_messages();
  const view = first_view();
  apply_view(view);
  await Promise.all([load_fonts(), start_core(), open_storage()]);
  by_id("app").hidden = false;
  mount_bar();
  mount_notebooks();
  mount_view_menu();
  mount_help();
  mount_how();
  mount_words();
  mount_files();
  mount_trouble();
  mount_busy();
  mount_table_view();
  mount_log();
  mount_profile();
  mount_questions();
  mount_report();
  mount_class();
  mount_ranges();
  await open_first(fresh_ui(view));
  addEventListener("resize", show);
}

/** What cannot start says so in the page itself; the words are in index.html. */
function blocked(error: unknown): void {
  by_id("app").hidden = true;
  by_id("blocked").hidden = false;
  by_id("blocked").classList.add("now");
  const why = by_id("blocked-why");
  why.textContent = error instanceof Error ? error.message : String(error);
  why.hidden = false;
}

by_id("blocked").hidden = true;
start().catch(blocked);
