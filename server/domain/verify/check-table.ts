import { canonicalJson, type Json } from '../ledger/canonical-json.ts';
import { canonicalValue, strictText } from './canonical-value.ts';
import { Wrong } from './wrong.ts';

/** Whether a table holds the rows that follow from the ledger. Throws Wrong with the first that does not. */
export function assertTable(file: string, bytes: Uint8Array, expected: readonly Json[]): void {
  const place = { file };
  const found = canonicalValue(strictText(bytes, place), place);
  const rows = Array.isArray(found) ? (found as readonly Json[]) : [];
  for (let i = 0; i < Math.max(rows.length, expected.length, 1); i += 1) {
    if (!Array.isArray(found) || !sameRow(rows[i], expected[i]))
      throw new Wrong('table-row', place, { row: i + 1 });
  }
}

/** Two rows, or two that are not there. */
function sameRow(one: Json | undefined, other: Json | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return canonicalJson(one) === canonicalJson(other);
}
