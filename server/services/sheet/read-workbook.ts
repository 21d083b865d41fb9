import { zipSync } from 'fflate';
import { readSheet } from 'read-excel-file/universal';
import { firstSheetPath } from './first-sheet-path.ts';
import { cellText } from './cell-text.ts';
import { checkWorksheet } from './check-worksheet.ts';
import { SHEET_LIMITS, SheetProblem, checkSize } from './sheet-limits.ts';
import { unzipCapped, zipNames } from './unzip-capped.ts';

/** Parts of a workbook: ECMA-376 Part 1, 12.3. */
const WORKBOOK = 'xl/workbook.xml';
const RELATIONS = 'xl/_rels/workbook.xml.rels';
const HEADS: ReadonlySet<string> = new Set([WORKBOOK, RELATIONS]);
const SHARED = /^xl\/(?:sharedStrings|styles)\w*\.xml$/u;

/**
 * Cells of the first sheet of an XLSX workbook; formulas by the value they had when it was saved. The
 * archive is unpacked here under a limit, looked through, and only then handed to the reader, which
 * would believe the archive's own sizes and fill every row to the widest cell. It is handed nothing that
 * was not looked through.
 */
export async function readWorkbook(bytes: Uint8Array): Promise<string[][]> {
  const names = zipNames(bytes);
  if (!names.includes(WORKBOOK)) throw new SheetProblem(otherArchive(names, bytes));
  const files = unzipCapped(bytes, partsOfFirstSheet(bytes), SHEET_LIMITS.inflatedBytes);
  for (const content of files.values()) checkWorksheet(new TextDecoder().decode(content));
  const rows = await readFirstSheet(zipSync(Object.fromEntries(files), { level: 0 }).buffer);
  checkSize(rows);
  return rows;
}

/** The workbook, its list of parts, the first sheet, shared strings and styles; other sheets may be as large as they like. */
function partsOfFirstSheet(bytes: Uint8Array): (name: string) => boolean {
  const heads = unzipCapped(bytes, (name) => HEADS.has(name), SHEET_LIMITS.inflatedBytes);
  const text = (name: string) => new TextDecoder().decode(heads.get(name));
  const first = firstSheetPath(text(WORKBOOK), text(RELATIONS));
  if (first === null) throw new SheetProblem('damaged');
  return (name) => HEADS.has(name) || name === first || SHARED.test(name);
}

async function readFirstSheet(archive: ArrayBuffer): Promise<string[][]> {
  let rows: unknown[][];
  try {
    rows = await readSheet(archive, 1, { trim: false });
  } catch {
    throw new SheetProblem('damaged');
  }
  return rows.map((row) => row.map(cellText));
}

/** OpenDocument keeps its type in an uncompressed first file 'mimetype' (ODF 1.3 Part 2, 3.3). */
function otherArchive(
  names: readonly string[],
  bytes: Uint8Array,
): 'binary-excel' | 'open-document' | 'not-a-sheet' {
  if (names.includes('xl/workbook.bin')) return 'binary-excel';
  const mimetype = unzipCapped(bytes, (name) => name === 'mimetype', 1000).get('mimetype');
  const isOpenDocument = mimetype && new TextDecoder().decode(mimetype).includes('opendocument.spreadsheet');
  return isOpenDocument ? 'open-document' : 'not-a-sheet';
}
