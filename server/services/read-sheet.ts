import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import type { SheetRefusal } from '#domain/frame/sheet-refusal';
import { decodeText, type TextEncoding } from './sheet/decode-text.ts';
import { foreignFormat, isZip } from './sheet/foreign-format.ts';
import { foreignText, isRunningText } from './sheet/foreign-text.ts';
import { readDelimited } from './sheet/read-delimited.ts';
import { readWorkbook } from './sheet/read-workbook.ts';
import { SHEET_LIMITS, SheetProblem } from './sheet/sheet-limits.ts';

export type SheetEncoding = SchedulePreviewView['encoding'];

export type Sheet =
  | { readonly ok: true; readonly rows: string[][]; readonly encoding: SheetEncoding }
  | {
      readonly ok: false;
      readonly code: 'schedule-unreadable';
      /** `line` and `limit` where the reason has them; sentences in domain/frame/sheet-refusal. */
      readonly params: { readonly reason: SheetRefusal; readonly line?: number; readonly limit?: number };
    };

/** Reads sheets where nobody waits for it; server/sheets implements it. Never rejects for what a file holds. */
export interface SheetReader {
  read(bytes: Uint8Array, contentType: string): Promise<Sheet>;
}

/**
 * The cells of a CSV file or of the first sheet of a workbook, every row, blank ones too. What the file
 * is, its content decides; the announced type serves only for its charset (RFC 7111). Never throws for
 * what a file holds.
 */
export async function readSheet(bytes: Uint8Array, contentType: string): Promise<Sheet> {
  try {
    if (bytes.length === 0) throw new SheetProblem('empty');
    if (bytes.length > SHEET_LIMITS.fileMb * 1_000_000)
      throw new SheetProblem('too-large', { limit: SHEET_LIMITS.fileMb });
    const foreign = foreignFormat(bytes);
    if (foreign) throw new SheetProblem(foreign);
    if (isZip(bytes)) return { ok: true, rows: await readWorkbook(bytes), encoding: 'xlsx' };
    const { text, encoding } = readText(bytes, contentType);
    const rows = readDelimited(text);
    if (isRunningText(rows)) throw new SheetProblem('running-text');
    return { ok: true, rows, encoding };
  } catch (error) {
    if (!(error instanceof SheetProblem)) throw error;
    return { ok: false, code: 'schedule-unreadable', params: { reason: error.reason, ...error.params } };
  }
}

function readText(bytes: Uint8Array, contentType: string): { text: string; encoding: TextEncoding } {
  const decoded = decodeText(bytes, contentType);
  if (!decoded) throw new SheetProblem(bytes.includes(0) ? 'not-a-sheet' : 'unknown-encoding');
  if (decoded.text.includes('\0')) throw new SheetProblem('not-a-sheet');
  const foreign = foreignText(decoded.text);
  if (foreign) throw new SheetProblem(foreign);
  if (decoded.text.trim() === '') throw new SheetProblem('empty');
  return decoded;
}
