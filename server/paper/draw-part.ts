import type { Sheet, SheetChange, SheetMember, SheetWaiver } from '#domain/record/sheet/sheet';
import { drawFacts } from './draw-head.ts';
import { drawLines, heightOfLines } from './lines.ts';
import { HAIRLINE, INK, LINE_WIDTH, MARGIN, SOFT, VERMILION, keepTogether, type Pdf } from './page.ts';

/** A heading with what is said of all below it, and with the first of that: `below` points of it. */
export function drawHeading(
  pdf: Pdf,
  { heading, lead }: { heading: string; lead: string },
  below: number,
): void {
  const wide = { width: LINE_WIDTH };
  const headed = pdf.font('strong').fontSize(12).heightOfString(heading, wide);
  const led = pdf.font('plain').fontSize(8.5).heightOfString(lead, wide);
  keepTogether(pdf, headed + led + 18 + below);
  pdf.y += 8;
  pdf.moveTo(MARGIN.left, pdf.y).lineTo(MARGIN.left + LINE_WIDTH, pdf.y);
  pdf.lineWidth(0.7).strokeColor(HAIRLINE).stroke();
  pdf.y += 6;
  pdf.font('strong').fontSize(12).fillColor(INK).text(heading, MARGIN.left, pdf.y, wide);
  pdf.font('plain').fontSize(8.5).fillColor(SOFT).text(lead, wide);
  pdf.fillColor(INK);
  pdf.y += 4;
}

export function drawWaived(pdf: Pdf, waived: Sheet['waived']): void {
  const [first] = waived.items;
  drawHeading(pdf, waived, first ? heightOfMarked(pdf, first) : 0);
  for (const waiver of waived.items) drawMarked(pdf, waiver);
}

export function drawRefused(pdf: Pdf, refused: Sheet['refused']): void {
  if (refused === null) return;
  const items = refused.items.map(({ said, lines }) => ({ mark: said, lines }));
  const [first] = items;
  drawHeading(pdf, refused, first ? heightOfMarked(pdf, first) : 0);
  for (const one of items) drawMarked(pdf, one);
}

export function drawLater(pdf: Pdf, later: Sheet['later']): void {
  drawHeading(pdf, later, FIRST_FACT);
  drawFacts(pdf, later.facts, LINE_WIDTH);
  for (const change of later.items) drawMarked(pdf, change);
}

/** Three lines. */
const FIRST_FACT = 40;
const INDENT = 12;

function heightOfMarked(pdf: Pdf, { lines }: SheetWaiver | SheetChange): number {
  pdf.font('plain').fontSize(9);
  return heightOfLines(pdf, lines, LINE_WIDTH - INDENT) + 20;
}

function drawMarked(pdf: Pdf, marked: SheetWaiver | SheetChange): void {
  keepTogether(pdf, heightOfMarked(pdf, marked));
  pdf.font('strong').fontSize(10).fillColor(INK);
  pdf.text(marked.mark, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.font('plain').fontSize(9);
  drawLines(pdf, marked.lines, { x: MARGIN.left + INDENT, y: pdf.y, width: LINE_WIDTH - INDENT });
  pdf.x = MARGIN.left;
  pdf.y += 4;
}

/** The line over the records of a member, and what is asked of it. */
export function heightOfMember(pdf: Pdf, { text }: Pick<SheetMember, 'text'>): number {
  pdf.font('plain').fontSize(9);
  return pdf.heightOfString(text, { width: LINE_WIDTH }) + 24;
}

/** `below`: the height of the first of its records. */
export function drawMember(pdf: Pdf, { mark, kind, state, text, isWaived }: MemberLine, below: number): void {
  keepTogether(pdf, heightOfMember(pdf, { text }) + below);
  pdf.y += 4;
  pdf.font('strong').fontSize(10.5).fillColor(INK);
  pdf.text([mark, kind].join(' ').trim(), MARGIN.left, pdf.y, { width: LINE_WIDTH, continued: true });
  pdf
    .font('plain')
    .fontSize(9)
    .fillColor(isWaived ? VERMILION : SOFT);
  pdf.text(`  ${state}`, { continued: false });
  pdf.fillColor(INK).text(text, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.y += 2;
}

interface MemberLine extends Pick<SheetMember, 'mark' | 'kind' | 'state' | 'text'> {
  readonly isWaived: boolean;
}
