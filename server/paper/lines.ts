import type { Pdf } from './page.ts';

/** Each by itself: of a text with breaks in it pdfkit makes an empty line where a word just fills one. */
export function drawLines(
  pdf: Pdf,
  lines: readonly string[],
  { x, y, width }: { x: number; y: number; width: number },
): void {
  pdf.y = y;
  for (const line of lines) pdf.text(line, x, pdf.y, { width });
}

/** In the font that is set. */
export function heightOfLines(pdf: Pdf, lines: readonly string[], width: number): number {
  return lines.reduce((sum, line) => sum + pdf.heightOfString(line, { width }), 0);
}
