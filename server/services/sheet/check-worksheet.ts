import { attribute } from './xml-attribute.ts';
import { SHEET_LIMITS, SheetProblem } from './sheet-limits.ts';

/** Opening tags of rows and cells. Attribute values may not hold '<' (XML 1.0, 3.1), which keeps this linear. */
const ROW_OR_CELL = /<(?:[\w.-]+:)?(row|c)(?=[\s/>])((?:[^<>"']|"[^<"]*"|'[^<']*')*)>/gu;
/** A cell of the greatest length with each character written as `&#x10ffff;`, and a tag. */
const LONGEST_TEXT = 12 * SHEET_LIMITS.cellLength;
const REFERENCE = /^([A-Z]{1,3})([1-9][0-9]{0,6})$/u;

/**
 * Refuses a worksheet whose cells would fill the memory: far-off rows and columns are a few bytes in the
 * file and millions of cells when read. Comments, CDATA and DTDs, which spreadsheets do not write into
 * their parts, are refused so that nothing can hide from this look. Empty formatted cells may lie anywhere.
 */
export function checkWorksheet(xml: string): void {
  if (xml.includes('<!') || xml.indexOf('<?', 1) > 0) throw new SheetProblem('damaged');
  checkTexts(xml);
  let [lastLine, lastColumn] = [0, 0];
  for (const match of xml.matchAll(ROW_OR_CELL)) {
    const [tag, name, attributes = ''] = match;
    const reference = attribute(attributes, 'r');
    if (name === 'row') checkRow(reference);
    else if (!isEmptyCell(xml, match.index + tag.length, attributes)) {
      const { line, column } = checkCell(reference);
      [lastLine, lastColumn] = [Math.max(lastLine, line), Math.max(lastColumn, column)];
    }
  }
  // The reader fills every row to the widest cell.
  if (lastLine * lastColumn > SHEET_LIMITS.cells)
    throw new SheetProblem('too-many-cells', { limit: SHEET_LIMITS.cells });
}

/** The reader's time grows with the square of a text's length. */
function checkTexts(xml: string): void {
  for (let at = 0; at < xml.length;) {
    const next = xml.indexOf('<', at);
    const end = next < 0 ? xml.length : next;
    if (end - at > LONGEST_TEXT) throw new SheetProblem('damaged');
    at = end + 1;
  }
}

function checkRow(reference: string | null): void {
  if (reference === null) return;
  if (!/^[1-9][0-9]{0,6}$/u.test(reference) || Number(reference) > SHEET_LIMITS.gridRows)
    throw new SheetProblem('damaged');
}

function isEmptyCell(xml: string, end: number, attributes: string): boolean {
  return attributes.endsWith('/') || /^\s*<\//u.test(xml.slice(end, end + 20));
}

function checkCell(reference: string | null): { line: number; column: number } {
  const [, letters = '', digits = ''] = REFERENCE.exec(reference ?? '') ?? [];
  if (letters === '') throw new SheetProblem('damaged');
  const line = Number(digits);
  if (line > SHEET_LIMITS.rows) throw new SheetProblem('too-many-rows', { limit: SHEET_LIMITS.rows });
  const column = columnNumber(letters);
  if (column > SHEET_LIMITS.columns)
    throw new SheetProblem('too-many-columns', { line, limit: SHEET_LIMITS.columns });
  return { line, column };
}

function columnNumber(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}
