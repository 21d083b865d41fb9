import type { Sheet, SheetChange, SheetMember, SheetWaiver } from '#domain/record/sheet/sheet';
import { drawFacts } from './draw-head.ts';
import { drawLines, heightOfLines } from './lines.ts';
import { HAIRLINE, INK, LINE_WIDTH, MARGIN, SOFT, VERMILION, keepTogether, type Pdf } from './page.ts';

/** A heading with what is said of all below it; never the last thing on a page. */
export function drawHeading(pdf: Pdf, { heading, lead }: { heading: string; lead: string }): void {
  keepTogether(pdf, 90);
  pdf.y += 8;
  pdf.moveTo(MARGIN.left, pdf.y).lineTo(MARGIN.left + LINE_WIDTH, pdf.y);
  pdf.lineWidth(0.7).strokeColor(HAIRLINE).stroke();
  pdf.y += 6;
  pdf.font('strong').fontSize(12).fillColor(INK).text(heading, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.font('plain').fontSize(8.5).fillColor(SOFT).text(lead, { width: LINE_WIDTH });
  pdf.fillColor(INK);
  pdf.y += 4;
}

export function drawWaived(pdf: Pdf, waived: Sheet['waived']): void {
  drawHeading(pdf, waived);
  for (const waiver of waived.items) drawMarked(pdf, waiver);
}

export function drawLater(pdf: Pdf, later: Sheet['later']): void {
  drawHeading(pdf, later);
  drawFacts(pdf, later.facts, LINE_WIDTH);
  for (const change of later.items) drawMarked(pdf, change);
}

function drawMarked(pdf: Pdf, { mark, lines }: SheetWaiver | SheetChange): void {
  const width = LINE_WIDTH - 12;
  pdf.font('plain').fontSize(9);
  keepTogether(pdf, Math.min(heightOfLines(pdf, lines, width) + 18, 120));
  pdf.font('strong').fontSize(10).fillColor(INK).text(mark, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.font('plain').fontSize(9);
  drawLines(pdf, lines, { x: MARGIN.left + 12, y: pdf.y, width });
  pdf.x = MARGIN.left;
  pdf.y += 4;
}

/** The line over the records of a member; `below`: the height of the first of them. */
export function drawMember(pdf: Pdf, { mark, state, text, isWaived }: MemberLine, below: number): void {
  pdf.font('plain').fontSize(9);
  keepTogether(pdf, pdf.heightOfString(text, { width: LINE_WIDTH }) + 22 + below);
  pdf.y += 4;
  pdf.font('strong').fontSize(10.5).fillColor(INK);
  pdf.text(mark, MARGIN.left, pdf.y, { width: LINE_WIDTH, continued: true });
  pdf
    .font('plain')
    .fontSize(9)
    .fillColor(isWaived ? VERMILION : SOFT);
  pdf.text(`  ${state}`, { continued: false });
  pdf.fillColor(INK).text(text, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.y += 2;
}

interface MemberLine extends Pick<SheetMember, 'mark' | 'state' | 'text'> {
  readonly isWaived: boolean;
}
