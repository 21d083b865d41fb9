import type { SheetRecord } from '#domain/record/sheet/sheet';
import { drawLines, heightOfLines } from './lines.ts';
import { BOTTOM, HAIRLINE, INK, LINE_WIDTH, MARGIN, SOFT, keepTogether, type Pdf } from './page.ts';

const GAP = 12;
const COLUMN = (LINE_WIDTH - GAP) / 2;
const PICTURE = 82;

export const ROW_HEIGHT = PICTURE + 6;

export interface Pictured {
  readonly record: SheetRecord;
  /** JPEG; null where there is none. */
  readonly picture: Uint8Array | null;
}

/** One or two records side by side, each with its picture before its words. */
export function drawRow(pdf: Pdf, row: readonly Pictured[]): void {
  pdf.font('plain').fontSize(8);
  const heights = row.map(({ record }) => heightOfLines(pdf, record.lines, widthOf(record)));
  const height = Math.max(...heights, ...row.map(({ record }) => (record.isPictured ? PICTURE : 0)));
  keepTogether(pdf, Math.min(height, BOTTOM - MARGIN.top));
  const { y } = pdf;
  row.forEach((one, n) => drawRecord(pdf, one, MARGIN.left + n * (COLUMN + GAP), y));
  pdf.x = MARGIN.left;
  pdf.y = y + height + 6;
}

function widthOf({ isPictured }: SheetRecord): number {
  return COLUMN - (isPictured ? PICTURE + 8 : 0);
}

function drawRecord(pdf: Pdf, { record, picture }: Pictured, x: number, y: number): void {
  if (record.isPictured) drawPicture(pdf, picture, x, y);
  const left = record.isPictured ? x + PICTURE + 8 : x;
  pdf.font('plain').fontSize(8).fillColor(INK);
  drawLines(pdf, record.lines, { x: left, y, width: widthOf(record) });
}

function drawPicture(pdf: Pdf, picture: Uint8Array | null, x: number, y: number): void {
  if (picture) {
    pdf.image(Buffer.from(picture), x, y, { fit: [PICTURE, PICTURE] });
    return;
  }
  pdf.rect(x, y, PICTURE, PICTURE).lineWidth(0.5).strokeColor(HAIRLINE).stroke();
  pdf
    .fontSize(12)
    .fillColor(SOFT)
    .text('—', x, y + PICTURE / 2 - 8, { width: PICTURE, align: 'center' });
}
