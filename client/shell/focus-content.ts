/** What a screen is drawn into: in a house below its menu, elsewhere the whole content. */
export const CONTENT = 'content';
export const BELOW_MENU = 'below-menu';

export function focusContent(): void {
  const content = document.getElementById(BELOW_MENU) ?? document.getElementById(CONTENT);
  content?.focus({ preventScroll: true });
}
