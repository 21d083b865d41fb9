import type { ReactNode } from 'react';

const CONTENT = 'content';
export const CONTENT_ADDRESS = `#${CONTENT}`;

/** What a screen is drawn into: in a house below its menu, whose parts would else have to be passed each time. */
export function Content({ children }: { children: ReactNode }) {
  return (
    <main id={CONTENT} tabIndex={-1}>
      {children}
    </main>
  );
}

export function focusContent(): void {
  document.getElementById(CONTENT)?.focus({ preventScroll: true });
}
