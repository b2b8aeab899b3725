// Small helpers over the page's own structure. Text goes in as text; nothing here parses markup.

/** The element with this id. It stands in index.html, so a missing one is a mistake of ours and is said at once. */
export function by_id<T extends HTMLElement = HTMLElement>(id: string): T {
  const el = document.getElementById(id);
  if (!el) throw new Error(`index.html has no #${id}`);
  return el as T;
}

/** The part of a repeated element that carries `data-part="name"`. */
export function part<T extends HTMLElement = HTMLElement>(el: ParentNode, name: string): T {
  const found = el.querySelector<T>(`[data-part="${name}"]`);
  if (!found) throw new Error(`index.html has no part ${name}`);
  return found;
}

/** A template of index.html. */
export function template(id: string): HTMLTemplateElement {
  return by_id<HTMLTemplateElement>(id);
}

/** Sets the text of an element, only if it changes. */
export function set_text(el: Element, text: string): void {
  if (el.textContent !== text) el.textContent = text;
}

/** Sets an attribute, only if it changes; `null` takes it away. */
export function set_attr(el: Element, name: string, value: string | null): void {
  if (value === null) el.removeAttribute(name);
  else if (el.getAttribute(name) !== value) el.setAttribute(name, value);
}

const held = new Set<Element>();

/** While what was typed is on its way into a large notebook, the field in hand keeps its own text. */
export function hold_field(on: boolean): void {
  if (!on) held.clear();
  else if (document.activeElement) held.add(document.activeElement);
}

/** Sets the text of a field, only if it differs: the caret of a field being typed in stays where it is. */
export function set_value(field: HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement, text: string): void {
  if (field.value !== text && !held.has(field)) field.value = text;
}

/** Shows or hides an element. */
export function toggle(el: HTMLElement, on: boolean): void {
  if (el.hidden === on) el.hidden = !on;
}

/**
 * Makes one child of `parent` per item from the template's first element and fills it. Children are reused by index, so
 * that the focus and a text being typed survive a whole redraw. Other children of `parent` (a legend, a row that is
 * always there) stay where they are.
 */
export function list<T>(
  parent: Element,
  source: HTMLTemplateElement,
  items: readonly T[],
  fill: (el: HTMLElement, item: T, index: number) => void,
): void {
  const made = owned(parent, source.id);
  while (made.length > items.length) made.pop()?.remove();
  for (const [index, item] of items.entries()) {
    let el = made[index];
    if (!el) {
      el = clone(source);
      const last = made[made.length - 1];
      if (last) last.after(el);
      else parent.append(el);
      made.push(el);
    }
    fill(el, item, index);
  }
}

const lists = new WeakMap<Element, Map<string, HTMLElement[]>>();

function owned(parent: Element, name: string): HTMLElement[] {
  let of_parent = lists.get(parent);
  if (!of_parent) {
    of_parent = new Map();
    lists.set(parent, of_parent);
  }
  let made = of_parent.get(name);
  if (!made) {
    made = [];
    of_parent.set(name, made);
  }
  return made;
}

/** A copy of the first element of a template. */
export function clone(source: HTMLTemplateElement): HTMLElement {
  const first = source.content.firstElementChild;
  if (!first) throw new Error(`template ${source.id} is empty`);
  return document.importNode(first, true) as HTMLElement;
}

/** Gives the focus to a choice the page asks about, with its ring even after a press by pointer. */
export function focus_seen(el: HTMLElement): void {
  el.focus({ focusVisible: true } as FocusOptions);
}

/** Whether the element takes typed text. */
export function is_field(el: EventTarget | null): el is HTMLInputElement | HTMLTextAreaElement {
  return el instanceof HTMLTextAreaElement || (el instanceof HTMLInputElement && el.type === "text");
}

/** Resolves after the browser has painted what is on the page now. */
export function painted(): Promise<void> {
  return new Promise((done) => {
    if (document.visibilityState === "hidden") setTimeout(done, 0);
    else requestAnimationFrame(() => setTimeout(done, 0));
  });
}
