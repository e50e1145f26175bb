/** Moves the focus once what was just changed stands on the page. */
export function focusOn(id: string): void {
  requestAnimationFrame(() => document.getElementById(id)?.focus());
}
