import type { Page } from 'playwright-core';
import { bringEyes } from './in-page.ts';

const AT_MOST = 150;

interface Step {
  readonly key: number | null;
  readonly name: string;
  readonly fault: string | null;
}

/**
 * Goes round the whole screen by Tab until the first control comes again: what has the focus shows it, is in
 * sight, and everything is reached.
 */
export async function hiddenFocus(page: Page): Promise<string[]> {
  await bringEyes(page);
  await remember(page);
  const found = new Set<string>();
  const reached: number[] = [];
  for (let i = 0; i < AT_MOST; i++) {
    await page.keyboard.press('Tab');
    const { key, name, fault } = await look(page);
    if (key === null) continue;
    // A field for a day has several stops of its own.
    if (key === reached[0] && reached.at(-1) !== key) break;
    reached.push(key);
    if (fault) found.add(`${name}: ${fault}`);
  }
  return [...found, ...(await missed(page, reached))];
}

/** Every control without the focus, as it is drawn. */
function remember(page: Page): Promise<void> {
  return page.evaluate(() => {
    const drawing = (element: Element) => {
      const { outlineStyle, outlineWidth, outlineColor, boxShadow, borderColor, stroke, strokeWidth, top } =
        getComputedStyle(element);
      return [
        outlineStyle,
        outlineWidth,
        outlineColor,
        boxShadow,
        borderColor,
        stroke,
        strokeWidth,
        top,
      ].join();
    };
    const shown = (element: Element) => {
      const whole = (element instanceof HTMLInputElement && element.closest('label')) || element;
      return [whole, ...Array.from(whole.querySelectorAll('*'))];
    };
    const controls = Array.from(
      document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex]'),
    );
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const before = controls.map((control) => shown(control).map(drawing).join('|'));
    window.focusing = { controls, before, shown, drawing };
  });
}

declare global {
  interface Window {
    focusing?: {
      controls: Element[];
      before: string[];
      shown: (element: Element) => Element[];
      drawing: (element: Element) => string;
    };
  }
}

function look(page: Page): Promise<Step> {
  return page.evaluate(() => {
    const active = document.activeElement;
    const { focusing, looking } = window;
    if (!active || active === document.body || !focusing || !looking)
      return { key: null, name: '', fault: null };
    const key = focusing.controls.indexOf(active);
    const parts = focusing.shown(active);
    return { key, name: looking.describe(parts[0] ?? active), fault: faultOf() };

    function faultOf(): string | null {
      if (parts.map(focusing?.drawing ?? String).join('|') === focusing?.before[key]) return 'shows no focus';
      const ring = parts.find((part) => getComputedStyle(part).outlineStyle !== 'none') ?? parts[0];
      return ring ? hiddenBehind(ring) : null;
    }

    /** WCAG 2.2, 2.4.11, and its ring whole: no frame that scrolls or cuts takes a side of it. */
    function hiddenBehind(ring: Element): string | null {
      const { outlineWidth, outlineOffset, outlineStyle } = getComputedStyle(ring);
      const around = outlineStyle === 'none' ? 0 : parseFloat(outlineWidth) + parseFloat(outlineOffset);
      const box = ring.getBoundingClientRect();
      if (box.bottom < 1 || box.top > innerHeight - 1) return 'is out of sight';
      for (let up = ring.parentElement; up && up !== document.body; up = up.parentElement) {
        if (getComputedStyle(up).overflowX === 'visible') continue;
        const frame = up.getBoundingClientRect();
        const cut = Math.max(
          ...[frame.left - box.left, box.right - frame.right].map((side) => side + around),
          ...[frame.top - box.top, box.bottom - frame.bottom].map((side) => side + around),
        );
        if (cut > 1 && box.height < frame.height)
          return `its ring is cut by ${Math.round(cut)} px in ${looking?.describe(up)}`;
      }
      return null;
    }
  });
}

/** Of a group of radio buttons the chosen one is enough: arrow keys go on from there. */
function missed(page: Page, reached: number[]): Promise<string[]> {
  return page.evaluate((keys) => {
    const { focusing, looking } = window;
    const dialog = Array.from(document.querySelectorAll('[role=dialog], [role=alertdialog]')).at(-1);
    return (focusing?.controls ?? []).flatMap((control, key) => {
      const isOpen =
        !(control instanceof HTMLElement) || (control.tabIndex >= 0 && !control.matches(':disabled'));
      const isThere = looking?.isSeen(
        (control instanceof HTMLInputElement && control.closest('label')) || control,
      );
      const isRadio = control.matches('input[type=radio]');
      if (keys.includes(key) || !isOpen || !isThere || isRadio || (dialog && !dialog.contains(control)))
        return [];
      return [`${looking?.describe(control)}: not reached by Tab`];
    });
  }, reached);
}
