// Where the focus is when a screen or a panel takes the place of another.

/** The focus has no home of its own yet: what had it is gone or hidden, or it stands on the new panel as a whole. */
export function focus_is_lost(panel: HTMLElement): boolean {
  const at = document.activeElement;
  return at === null || at === document.body || at === panel || at.closest("[hidden]") !== null;
}
