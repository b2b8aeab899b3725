// Where the focus is when a screen or a panel takes the place of another.

/** The element that had the focus is gone or hidden: whoever takes its place gives the focus a new home. */
export function focus_is_lost(): boolean {
  const at = document.activeElement;
  return at === null || at === document.body || at.closest("[hidden]") !== null;
}
