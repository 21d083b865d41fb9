import type { SheetRefusal } from '#domain/frame/sheet-refusal';

/** What a schedule may have at most; far above any real house, far below what could stop the server. */
export const SHEET_LIMITS = {
  fileMb: 20,
  inflatedBytes: 100_000_000,
  rows: 50_000,
  columns: 200,
  /** Rows times the widest of them: 20,000 rows of 30 columns. Reading them takes seconds. */
  cells: 600_000,
  /** Excel's own limit of a cell; shorter limits of single fields are said row by row. */
  cellLength: 32_767,
  /** Rows that a worksheet can have (ECMA-376 Part 1, 18.3.1.73: Excel's grid ends at 1,048,576). */
  gridRows: 1_048_576,
} as const;

/** Thrown inside the reader, turned into an answer at its edge. */
export class SheetProblem extends Error {
  constructor(
    readonly reason: SheetRefusal,
    readonly params: { readonly line?: number; readonly limit?: number } = {},
  ) {
    super(reason);
  }
}

/** Refuses cells beyond the limits; `rows` counts from line 1. */
export function checkSize(rows: readonly (readonly string[])[]): void {
  if (rows.length > SHEET_LIMITS.rows) throw new SheetProblem('too-many-rows', { limit: SHEET_LIMITS.rows });
  if (rows.reduce((sum, row) => sum + row.length, 0) > SHEET_LIMITS.cells)
    throw new SheetProblem('too-many-cells', { limit: SHEET_LIMITS.cells });
  rows.forEach((row, i) => {
    if (row.length > SHEET_LIMITS.columns)
      throw new SheetProblem('too-many-columns', { line: i + 1, limit: SHEET_LIMITS.columns });
    if (row.some((cell) => cell.length > SHEET_LIMITS.cellLength))
      throw new SheetProblem('cell-too-long', { line: i + 1, limit: SHEET_LIMITS.cellLength });
  });
}
