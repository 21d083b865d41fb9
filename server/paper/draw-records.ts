import type { SheetRecord } from '#domain/record/sheet/sheet';
import type { PaperPicture } from '../services/ports.ts';
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
  readonly picture: PaperPicture | null;
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

/** Of all that is drawn of a row at most, which does not go over a page; pictures are not read yet. */
export function heightOfRow(pdf: Pdf, row: readonly SheetRecord[]): number {
  return Math.max(0, ...row.map((record) => heightOfWords(pdf, record) + overWords(record)));
}

/** Each with its picture over its words. */
export function drawRow(pdf: Pdf, row: readonly Pictured[]): void {
  const most = heightOfRow(
    pdf,
    row.map(({ record }) => record),
  );
  keepTogether(pdf, most);
  const { y } = pdf;
  // Words of neighbours begin on one line, below the higher picture.
  const words = y + Math.max(...row.map(({ record, picture }) => overWords(record, picture)));
  row.forEach((one, n) => drawRecord(pdf, one, { x: MARGIN.left + n * (COLUMN + GAP), y, words }));
  pdf.x = MARGIN.left;
  pdf.y = words + Math.max(...row.map(({ record }) => heightOfWords(pdf, record))) + 6;
}

function heightOfWords(pdf: Pdf, record: SheetRecord): number {
  pdf.font('plain').fontSize(8);
  return heightOfLines(pdf, record.lines, widthOf(record));
}

function widthOf(record: SheetRecord): number {
  return saysMuch(record) ? LINE_WIDTH : COLUMN;
}

function overWords({ isPictured }: SheetRecord, picture: PaperPicture | null = null): number {
  if (!isPictured) return 0;
  return BELOW + (picture ? Math.min(PICTURE.height, PICTURE.width / picture.aspect) : PICTURE.height);
}

interface At {
  readonly x: number;
  readonly y: number;
  /** Where the words begin. */
  readonly words: number;
}

function drawRecord(pdf: Pdf, { record, picture }: Pictured, { x, y, words }: At): void {
  if (record.isPictured) drawPicture(pdf, picture, x, y);
  pdf.font('plain').fontSize(8).fillColor(INK);
  drawLines(pdf, record.lines, { x, y: words, width: widthOf(record) });
}

function drawPicture(pdf: Pdf, picture: PaperPicture | null, x: number, y: number): void {
  if (picture) {
    pdf.image(Buffer.from(picture.jpeg), x, y, { fit: [PICTURE.width, PICTURE.height] });
    return;
  }
  pdf.rect(x, y, PICTURE.width, PICTURE.height).lineWidth(0.5).strokeColor(HAIRLINE).stroke();
  pdf
    .fontSize(12)
    .fillColor(SOFT)
    .text('—', x, y + PICTURE.height / 2 - 8, { width: PICTURE.width, align: 'center' });
}
