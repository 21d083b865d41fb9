import type { Page } from 'playwright-core';

/** What the checks share inside the page, where no import reaches. */
export interface Looking {
  describe(element: Element): string;
  /** Drawn for eyes: not hidden, not the text that only a screen reader hears. */
  isSeen(element: Element): boolean;
}

declare global {
  interface Window {
    looking?: Looking;
  }
}

export function bringEyes(page: Page): Promise<void> {
  return page.evaluate(() => {
    window.looking = {
      describe(element) {
        const words = (element.getAttribute('aria-label') ?? element.textContent).trim().slice(0, 40);
        const sort = element.getAttribute('class')?.split(' ').join('.') ?? '';
        return `${element.localName}${sort && '.'}${sort} “${words}”`;
      },
      isSeen(element) {
        if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) return false;
        for (let up: Element | null = element; up; up = up.parentElement)
          if (getComputedStyle(up).clipPath === 'inset(50%)') return false;
        const { width, height } = element.getBoundingClientRect();
        return width > 1 && height > 1;
      },
    };
  });
}
