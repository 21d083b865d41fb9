import type { SheetRecord } from '#domain/record/sheet/sheet';
import { drawLines, heightOfLines } from './lines.ts';
import { HAIRLINE, INK, LINE_WIDTH, MARGIN, SOFT, keepTogether, type Pdf } from './page.ts';

const GAP = 12;
const COLUMN = (LINE_WIDTH - GAP) / 2;
/** Two in a row over the width of the text: a joint is recognised on paper. */
const PICTURE = { width: COLUMN, height: 150 };
const BELOW = 4;
/** Signs of a record that would make a tower of a narrow column. */
const MUCH = 220;

export interface Pictured {
  readonly record: SheetRecord;
  /** JPEG; null where there is none. */
  readonly picture: Uint8Array | null;
}

/** One or two records that stand side by side; one of which much is said has the line to itself. */
export function rowsOf(records: readonly SheetRecord[]): SheetRecord[][] {
  const rows: SheetRecord[][] = [];
  for (const record of records) {
    const last = rows.at(-1);
    if (last?.length === 1 && ![...last, record].some(saysMuch)) last.push(record);
    else rows.push([record]);
  }
  return rows;
}

const saysMuch = ({ lines }: SheetRecord) => lines.join('').length > MUCH;

/** Of all that is drawn of a row, which does not go over a page. */
export function heightOfRow(pdf: Pdf, row: readonly SheetRecord[]): number {
  pdf.font('plain').fontSize(8);
  const heights = row.map((record) => heightOfLines(pdf, record.lines, widthOf(record)) + overWords(record));
  return Math.max(0, ...heights);
}

/** Each with its picture over its words. */
export function drawRow(pdf: Pdf, row: readonly Pictured[]): void {
  const height = heightOfRow(
    pdf,
    row.map(({ record }) => record),
  );
  keepTogether(pdf, height);
  const { y } = pdf;
  row.forEach((one, n) => drawRecord(pdf, one, MARGIN.left + n * (COLUMN + GAP), y));
  pdf.x = MARGIN.left;
  pdf.y = y + height + 6;
}

function widthOf(record: SheetRecord): number {
  return saysMuch(record) ? LINE_WIDTH : COLUMN;
}

function overWords({ isPictured }: SheetRecord): number {
  return isPictured ? PICTURE.height + BELOW : 0;
}

function drawRecord(pdf: Pdf, { record, picture }: Pictured, x: number, y: number): void {
  if (record.isPictured) drawPicture(pdf, picture, x, y);
  pdf.font('plain').fontSize(8).fillColor(INK);
  drawLines(pdf, record.lines, { x, y: y + overWords(record), width: widthOf(record) });
}

function drawPicture(pdf: Pdf, picture: Uint8Array | null, x: number, y: number): void {
  if (picture) {
    pdf.image(Buffer.from(picture), x, y, { fit: [PICTURE.width, PICTURE.height] });
    return;
  }
  pdf.rect(x, y, PICTURE.width, PICTURE.height).lineWidth(0.5).strokeColor(HAIRLINE).stroke();
  pdf
    .fontSize(12)
    .fillColor(SOFT)
    .text('—', x, y + PICTURE.height / 2 - 8, { width: PICTURE.width, align: 'center' });
}
