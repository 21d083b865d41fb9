import type { Page } from 'playwright-core';
import { bringEyes } from './in-page.ts';

/** A finger moves these sideways, and nothing else. */
const MEANT_TO_SCROLL = '.table-scroll, .house-nav ul, .bench-acts';

/** Text that is cut, or stands outside of its box or of the window, and a page that scrolls sideways. */
export async function spilt(page: Page): Promise<string[]> {
  await bringEyes(page);
  return page.evaluate((meantToScroll) => {
    const found: string[] = [];
    // Not window.innerWidth: a phone zooms out of a page that is too wide.
    const room = document.documentElement.clientWidth;
    const over = (document.scrollingElement?.scrollWidth ?? 9999) - room;
    if (over > 0) found.push(`the page is ${over} px too wide`);
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) {
      const text = words.currentNode;
      const owner = text.parentElement;
      if (!owner || !text.nodeValue?.trim() || !window.looking?.isSeen(owner)) continue;
      if (owner.closest('svg, option, textarea, script, style')) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const fault = faultOf(owner, range.getBoundingClientRect(), trimmed(owner, text.nodeValue));
      if (fault) found.push(`${window.looking.describe(owner)}: ${fault}`);
    }
    for (const select of Array.from(document.querySelectorAll('select'))) {
      const fault = window.looking?.isSeen(select) && cutChoice(select);
      if (fault) found.push(fault);
    }
    return found;

    /** Full-width punctuation is half empty; Chromium hangs that half over the end of a line (CSS Text 4, 8.4). */
    function trimmed(owner: Element, text: string): number {
      return /[）」』】、。，．]/.test(text) ? parseFloat(getComputedStyle(owner).fontSize) / 2 : 0;
    }

    function faultOf(owner: Element, { left, right, top, bottom }: DOMRect, empty: number): string | null {
      for (let box: Element | null = owner; box && box !== document.body; box = box.parentElement) {
        if (box.matches(meantToScroll)) return null;
        const style = getComputedStyle(box);
        // A reading is wider than its kanji and hangs over its neighbours (CSS Ruby 1, overhang).
        if (box.matches('ruby, rt')) continue;
        if (style.display === 'inline' || style.display === 'contents') continue;
        const edge = box.getBoundingClientRect();
        const sideways = Math.max(edge.left - left, right - empty - edge.right);
        // A line's glyphs are taller than a tight line; only text that is really cut counts.
        const upright = Math.max(edge.top - top, bottom - edge.bottom);
        const scrolls = /auto|scroll/.test(style.overflowY);
        if (style.textOverflow === 'ellipsis' && isSaidElsewhere(owner)) return null;
        if (sideways > 1) return `${Math.round(sideways)} px outside of ${window.looking?.describe(box)}`;
        if (/hidden|clip/.test(style.overflowY) && upright > 4)
          return `cut by ${Math.round(upright)} px in ${window.looking?.describe(box)}`;
        if (scrolls) return null;
        if (style.position === 'fixed') break;
      }
      return Math.max(-left, right - empty - room) > 1 ? 'outside of the window' : null;
    }

    /** Shortened, but its last word stands somewhere else in full. */
    function isSaidElsewhere(owner: Element): boolean {
      const word = owner.textContent.trim().split(/\s/).at(-1) ?? '';
      return document.body.innerText.split(word).length > 2;
    }

    function cutChoice(select: HTMLSelectElement): string | null {
      const ARROW = 16;
      const pen = document.createElement('canvas').getContext('2d');
      const style = getComputedStyle(select);
      if (!pen) return null;
      pen.font = style.font;
      const text = select.selectedOptions[0]?.text ?? '';
      const space = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
      const missing = pen.measureText(text).width + ARROW - space;
      return missing > 0 ? `choice “${text}” cut by ${Math.round(missing)} px` : null;
    }
  }, MEANT_TO_SCROLL);
}
