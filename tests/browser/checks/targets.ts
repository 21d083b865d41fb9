import type { Page } from 'playwright-core';
import { bringEyes } from './in-page.ts';

/** What is drawn on the picture is as large as the member is there; the list beside it says the same. */
const AS_LARGE_AS_THE_THING = '.bench-stage *';
const CONTROLS =
  'a[href], button, input, select, textarea, summary, [role=button], [role=link], [role=option], [role=radio], [role=checkbox]';

/** Controls that a thumb misses: below 44 × 44 CSS px (WCAG 2.2, 2.5.5), but for links within a sentence. */
export async function smallTargets(page: Page): Promise<string[]> {
  await bringEyes(page);
  return page.evaluate(
    ([controls, exempt]) => {
      const SMALLEST = 44;
      const targets = new Map<Element, Element>();
      const dialog = Array.from(document.querySelectorAll('[role=dialog], [role=alertdialog]')).at(-1);
      for (const control of Array.from((dialog ?? document).querySelectorAll(controls))) {
        if (control.matches(exempt) || isWithinSentence(control)) continue;
        // A tick is drawn over the real box, and its words are pressed as well.
        const label = control instanceof HTMLInputElement ? control.closest('label') : null;
        const target = label ?? control;
        if (window.looking?.isSeen(target)) targets.set(target, control);
      }
      return [...targets.keys()].flatMap((target) => {
        const { width, height } = target.getBoundingClientRect();
        // Half a pixel for rounding.
        if (Math.min(width, height) > SMALLEST - 0.5) return [];
        return [`${window.looking?.describe(target)}: ${width.toFixed(1)} × ${height.toFixed(1)}`];
      });

      /** Words run on before or after it in the same line of thought: text, not another element. */
      function isWithinSentence(link: Element): boolean {
        for (let part = link; getComputedStyle(part).display === 'inline';) {
          const { parentElement } = part;
          const words = Array.from(parentElement?.childNodes ?? []).filter((node) => node instanceof Text);
          if (words.some(({ data }) => /\p{L}/u.test(data))) return true;
          if (!parentElement) return false;
          part = parentElement;
        }
        return false;
      }
    },
    [CONTROLS, AS_LARGE_AS_THE_THING] as const,
  );
}
