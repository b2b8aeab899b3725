// A real browser for the tests, Chromium or Firefox by the same few words. The page is opened from its file, as in class.

import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { pathToFileURL } from "node:url";

const from_web = createRequire(new URL("../../web/package.json", import.meta.url));
const puppeteer = from_web("puppeteer-core");

/** Which browser these tests run in. */
export const NAME = process.env.BROWSER ?? "chromium";

/** The page under test. */
export const PAGE = process.env.PAGE ?? path.resolve(import.meta.dirname, "../../build/layercast.html");

/** The page's address. */
export const ADDRESS = pathToFileURL(PAGE).href;

/** A place for one browser profile. Chromium keeps one store for all local files, so each test has its own profile. */
export function new_profile() {
  return mkdtempSync(path.join(tmpdir(), "layercast-profile-"));
}

/** Removes a profile; a browser that is just closing may still write into it. */
export function drop_profile(profile) {
  rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
}

/** A loaded machine is slow; nothing here measures time. */
const PATIENCE_MS = 30_000;

const CHROMIUM = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-sync"];

/**
 * Starts a browser.
 * @param {{ profile?: string, language?: string, width?: number, height?: number, scale?: number, touch?: boolean,
 *   refuse_storage?: boolean }} wishes
 *   profile: a folder of an earlier run, to find its store again; language: of the reader ("en-US"); refuse_storage: as a policy that
 *   lets pages keep nothing
 */
export async function start({
  profile,
  language = "en-US",
  width = 1366,
  height = 768,
  scale = 1,
  touch = false,
  refuse_storage = false,
} = {}) {
  const own = profile ?? new_profile();
  const viewport = { width, height, deviceScaleFactor: scale, hasTouch: touch, isMobile: touch && NAME === "chromium" };
  const downloads = path.join(own, "downloads");
  mkdirSync(downloads, { recursive: true });
  if (refuse_storage && NAME === "chromium") {
    mkdirSync(path.join(own, "Default"), { recursive: true });
    const preferences = { profile: { default_content_setting_values: { cookies: 2 } } };
    writeFileSync(path.join(own, "Default", "Preferences"), JSON.stringify(preferences));
  }
  const common = {
    headless: true,
    userDataDir: own,
    defaultViewport: viewport,
    protocolTimeout: 120_000,
  };
  const process_of =
    NAME === "firefox"
      ? await puppeteer.launch({
          ...common,
          browser: "firefox",
          executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
          extraPrefsFirefox: {
            // Without it all local files would share one store, as they do in no real Firefox.
            "security.fileuri.strict_origin_policy": true,
            "intl.accept_languages": `${language}, en`,
            ...(refuse_storage ? { "network.cookie.cookieBehavior": 2 } : {}),
            "browser.download.folderList": 2,
            // The list of downloads would open over the page and take its keys.
            "browser.download.alwaysOpenPanel": false,
            "browser.download.dir": downloads,
          },
        })
      : await puppeteer.launch({
          ...common,
          browser: "chrome",
          executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
          downloadBehavior: { policy: "allow", downloadPath: downloads },
          args: [...CHROMIUM, `--accept-lang=${language}`, `--lang=${language}`],
          env: { ...process.env, LANGUAGE: language.replace("-", "_") },
        });
  return new Browser(process_of, own, profile === undefined, downloads);
}

/** A running browser. */
export class Browser {
  constructor(inner, profile, temporary, downloads) {
    this.inner = inner;
    this.profile = profile;
    this.temporary = temporary;
    this.downloads = downloads;
  }

  /** Waits for a saved file and gives its path. A browser may write it under another name first, and rename it. */
  async saved(ending) {
    let before = "";
    for (let waited = 0; waited < 20_000; waited += 100) {
      const name = readdirSync(this.downloads).find((one) => one.endsWith(ending)) ?? "";
      const file = path.join(this.downloads, name);
      const size = name === "" ? 0 : (statSync(file, { throwIfNoEntry: false })?.size ?? 0);
      const now = `${name} ${size}`;
      if (size > 0 && now === before) return file;
      before = now;
      await pause(100);
    }
    throw new Error(`no file ending in ${ending} was saved`);
  }

  /** A new, empty tab without a network. */
  async tab() {
    const page = new Page(await this.inner.newPage());
    if (NAME === "chromium") await page.inner.setOfflineMode(true);
    return page;
  }

  /** The page in a tab with a store of its own, as in a fresh profile, which goes when the tab is closed. */
  async apart(viewport = null) {
    const context = await this.inner.createBrowserContext();
    const page = new Page(await context.newPage(), context);
    if (viewport !== null) await page.inner.setViewport({ isMobile: viewport.hasTouch ?? false, ...viewport });
    if (NAME === "chromium") await page.inner.setOfflineMode(true);
    return page;
  }

  /** Opens an address in a new tab and waits until the page has started. */
  async open(address = ADDRESS) {
    const page = await this.tab();
    await page.go(address);
    return page;
  }

  /** Ends it in good order. */
  async close() {
    await this.inner.close();
    if (this.temporary) drop_profile(this.profile);
  }

  /** Ends it as a flat battery does, with all the processes it has started; its profile stays. */
  async kill() {
    // It leads a process group of its own.
    const { pid } = this.inner.process();
    process.kill(-pid, "SIGKILL");
    for (let alive = true; alive; ) {
      await pause(10);
      try {
        process.kill(-pid, 0);
      } catch {
        alive = false;
      }
    }
  }
}

/** One tab. */
export class Page {
  constructor(inner, context = null) {
    this.inner = inner;
    this.context = context;
    /** Puts the focus where it is wanted at once, where the way there is not what is tested. */
    this.hurry = false;
    /** How long it is waited for something, milliseconds. */
    this.patience_ms = PATIENCE_MS;
    /** Every address asked for; Firefox's driver does not tell of the file itself. */
    this.requests = [];
    /** Everything a developer would see in red. */
    this.faults = [];
    // Data and blobs are in the page itself; they ask nobody.
    inner.on("request", (request) => {
      if (!/^(data|blob):/.test(request.url())) this.requests.push(request.url());
    });
    inner.on("pageerror", (error) => this.faults.push(String(error)));
    inner.on("console", (line) => {
      if (line.type() === "error" || line.type() === "warn") this.faults.push(line.text());
    });
    inner.on("dialog", (dialog) => dialog.accept());
  }

  /** Goes to an address and waits until the page has started, or says that it cannot. */
  async go(address = ADDRESS) {
    await this.inner.goto(address, { waitUntil: "load" });
    await this.started();
  }

  /** Waits until the page has shown its first state, or says that it cannot. */
  started() {
    return this.until(() => document.querySelector("[data-go][aria-current], #blocked.now") !== null);
  }

  /** Runs a function in the page. */
  run(what, ...args) {
    return this.inner.evaluate(what, ...args);
  }

  /** Waits until a function in the page gives something true, and gives it. Not being there yet is no fault. */
  async until(what, ...args) {
    let got;
    for (const end = Date.now() + this.patience_ms; Date.now() < end; await pause(30)) {
      got = await this.run(what, ...args).catch((error) => error);
      if (got && !(got instanceof Error)) return got;
    }
    throw new Error(`not within ${this.patience_ms / 1000} s, last ${got}: ${what} (${args.join(", ")})`);
  }

  /** Presses keys one after the other: "Tab", "Shift+Tab", "Control+v". */
  async press(...keys) {
    for (const key of keys) {
      const parts = key.split("+");
      const last = parts.pop();
      for (const part of parts) await this.inner.keyboard.down(part);
      await this.inner.keyboard.press(last);
      for (const part of parts.reverse()) await this.inner.keyboard.up(part);
    }
  }

  /** Types a text. */
  type(text) {
    return this.inner.keyboard.type(text);
  }

  /** Presses Tab, or Shift+Tab for what lies before, until the focus is on the first that `selector` names. */
  async tab_to(selector, most = 120) {
    if (this.hurry) {
      await this.inner.focus(selector);
      return;
    }
    const back = await this.run((s) => {
      const to = document.querySelector(s);
      const at = document.activeElement ?? document.body;
      return to !== null && at !== document.body && (at.compareDocumentPosition(to) & Node.DOCUMENT_POSITION_PRECEDING) > 0;
    }, selector);
    for (let i = 0; i < most; i += 1) {
      if (await this.run((s) => document.activeElement === document.querySelector(s), selector)) return;
      await this.press(back ? "Shift+Tab" : "Tab");
    }
    throw new Error(`${selector} is not reached by Tab; the focus is on ${await this.focused()}`);
  }

  /** Presses a button (or link) after reaching it by Tab. */
  async push(selector) {
    await this.tab_to(selector);
    await this.press("Enter");
  }

  /** What has the focus, for messages. */
  focused() {
    return this.run(() => {
      const at = document.activeElement;
      return at ? `${at.tagName.toLowerCase()}#${at.id}.${at.className} "${at.textContent?.trim().slice(0, 40)}"` : "nothing";
    });
  }

  /** Puts a text on the clipboard, as copying it in a spreadsheet does. */
  async copy(text) {
    if (NAME === "chromium") {
      const granted = { permission: { name: "clipboard-write" }, setting: "granted", origin: undefined };
      const session = await this.inner.createCDPSession();
      await session.send("Browser.setPermission", granted).catch(() => {});
      await session.detach();
    }
    await this.run((copied) => navigator.clipboard.writeText(copied), text);
  }

  /** Hands a text to what has the focus as a paste does, without the clipboard. */
  hand(text) {
    return this.run((pasted) => {
      const data = new DataTransfer();
      data.setData("text/plain", pasted);
      const at = document.activeElement ?? document.body;
      const event = new ClipboardEvent("paste", { bubbles: true, cancelable: true });
      // Firefox does not take it in the constructor.
      Object.defineProperty(event, "clipboardData", { value: data });
      at.dispatchEvent(event);
    }, text);
  }

  /** Gives a file to a file field. */
  async give_file(selector, file) {
    const field = await this.inner.$(selector);
    await field.uploadFile(file);
  }

  /** Keeps the text of the file that is saved next, in `window.saved`. */
  keep_saved() {
    return this.run(() => {
      const real = URL.createObjectURL;
      URL.createObjectURL = (blob) => {
        void blob.text().then((text) => {
          window.saved = text;
        });
        return real.call(URL, blob);
      };
    });
  }

  /** The words that stand in what `selector` names, as one line; only what can be seen. */
  text(selector = "body") {
    return this.run((s) => document.querySelector(s)?.innerText.replace(/\s+/g, " ").trim() ?? "", selector);
  }

  /** Waits until `selector` can be seen and holds `words`. */
  async sees(selector, words) {
    try {
      await this.until(
        (s, w) => {
          const at = document.querySelector(s);
          return at?.checkVisibility?.() && at.innerText.replace(/\s+/g, " ").includes(w);
        },
        selector,
        words,
      );
    } catch {
      throw new Error(`"${words}" is not in ${selector}: "${await this.text(selector)}"`);
    }
  }

  /** Waits until the whole notebook is in the browser's store. */
  kept() {
    return this.until(() => Object.keys(localStorage).every((name) => !name.startsWith("layercast.journal.")));
  }

  /** A picture of the window. */
  async shot(file) {
    await this.inner.screenshot({ path: file });
  }

  /** Every address asked for that is not the page's own file. */
  elsewhere() {
    return this.requests.filter((address) => address !== ADDRESS);
  }

  /** Closes the tab. */
  async close() {
    await this.inner.close();
    await this.context?.close();
  }
}
