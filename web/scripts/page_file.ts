// A page of its own as a file: its text and its look. Nothing in it runs or loads.

import { language } from "./say";

/** The file. `style`: all the look it has; `parts`: what is in it, copied. */
export function page_file(title: string, style: string, parts: readonly Element[]): string {
  const made = document.implementation.createHTMLDocument(title);
  const meta = (name: string, value: string, content: string): void => {
    const el = made.createElement("meta");
    el.setAttribute(name, value);
    if (content) el.content = content;
    made.head.prepend(el);
  };
  meta("http-equiv", "Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; font-src data:");
  meta("charset", "utf-8", "");
  made.documentElement.lang = language();
  made.body.className = "alone";
  made.body.append(...parts.map((part) => made.importNode(part, true)));
  // Its look comes in as text: this page's own policy, which the new document shares while it is made, knows one style only.
  const html = made.documentElement.outerHTML.replace("</head>", () => `<style>${style}</style></head>`);
  return `<!doctype html>\n${html}\n`;
}
