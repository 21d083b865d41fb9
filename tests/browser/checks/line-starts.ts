import type { Page } from 'playwright-core';
import { bringEyes } from './in-page.ts';

/** Closing brackets, full stops, commas, small kana: JLREQ (W3C), 3.1.7, cl-02, 06, 07, 10, 11. */
const NEVER_FIRST = '、。，．・：；？！）」』】〕］｝ー々ぁぃぅぇぉっゃゅょァィゥェォッャュョ';

/** Lines that begin with what must stay with the letter before it. */
export async function wrongLineStarts(page: Page): Promise<string[]> {
  await bringEyes(page);
  return page.evaluate((neverFirst) => {
    const found: string[] = [];
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) {
      const text = words.currentNode;
      const owner = text.parentElement;
      if (!owner || !/[ぁ-んァ-ヶ]/.test(text.nodeValue ?? '') || !window.looking?.isSeen(owner)) continue;
      const letters = text.nodeValue ?? '';
      for (let i = 1; i < letters.length; i++)
        if (neverFirst.includes(letters[i] ?? '') && topOf(text, i) > topOf(text, i - 1) + 5)
          found.push(`a line begins with ${letters.slice(i, i + 4)} in ${window.looking.describe(owner)}`);
    }
    return found;

    function topOf(text: Node, at: number): number {
      const range = document.createRange();
      range.setStart(text, at);
      range.setEnd(text, at + 1);
      return range.getBoundingClientRect().top;
    }
  }, NEVER_FIRST);
}
