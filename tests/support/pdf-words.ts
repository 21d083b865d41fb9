import { execFileSync } from 'node:child_process';

export interface PdfWord {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Whether poppler's pdftotext is installed: it reads what Chromium has written. */
export function canReadPdf(): boolean {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Every word of a PDF with its place in points, pages from 1. */
export function pdfWords(file: string): PdfWord[] {
  const html = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 });
  return html
    .split('<page ')
    .slice(1)
    .flatMap((page, n) =>
      [...page.matchAll(/<word xMin="(.+?)" yMin="(.+?)" xMax="(.+?)" yMax="(.+?)">(.*?)<\/word>/g)].map(
        ([, left, top, right, bottom, text = '']) => ({
          page: n + 1,
          text,
          left: Number(left),
          right: Number(right),
          top: Number(top),
          bottom: Number(bottom),
        }),
      ),
    );
}

/**
 * Pairs of words that are drawn over each other. Boxes are as tall as the tallest sign of a font, so that those of
 * neighbouring lines may meet; the middles of their heights do not.
 */
export function overdrawn(words: readonly PdfWord[]): string[] {
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      if (a.page !== b.page) return [];
      const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const apart = Math.abs(a.top + a.bottom - b.top - b.bottom) / 2;
      const isOver = width > 1 && apart < (a.bottom - a.top + b.bottom - b.top) / 5;
      return isOver ? [`page ${a.page}: ${a.text} and ${b.text}`] : [];
    }),
  );
}
