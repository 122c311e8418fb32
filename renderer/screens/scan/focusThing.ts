/**
 * Brings the row of a thing into sight and puts the focus on it; its acts follow with the tab key. The row and not a control in
 * it: the next label scanned must not be typed into a list. Answers whether it is on this page.
 */
export function focusThing(id: string): boolean {
  const row = document.querySelector<HTMLElement>(`[data-thing="${CSS.escape(id)}"]`);
  if (row === null) return false;
  row.scrollIntoView({ block: "center" });
  row.tabIndex = -1;
  row.focus();
  return true;
}
