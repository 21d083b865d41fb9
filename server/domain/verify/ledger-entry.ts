import { canonicalValue, strictText } from './canonical-value.ts';
import { FieldMissing, Fields, type JsonObject } from './fields.ts';
import { LEDGER } from './file-names.ts';
import type { Line } from './lines.ts';
import { Wrong } from './wrong.ts';

/** What stands on one line of the ledger. */
export interface LedgerLine {
  /** The exact text of which the leaf is made. */
  readonly canonical: string;
  readonly entry: LedgerEntry;
  /** As the line says. */
  readonly head: string;
  readonly leaf: string;
}

export interface LedgerEntry {
  readonly house: string;
  readonly seq: number;
  readonly at: string;
  readonly by: JsonObject | null;
  readonly kind: string;
  readonly version: number;
  readonly payload: Fields;
}

const FORM = /^\{"entry":(.*),"head":"([0-9a-f]{64})","leaf":"([0-9a-f]{64})"\}$/su;
const BEFORE_ENTRY = '{"entry":'.length;
const FRAME = ['at', 'by', 'house', 'kind', 'payload', 'seq', 'version'];

export const lineOf = (seq: number) => ({ file: LEDGER, line: seq + 1 });

/** Reads one line; says nothing yet of its hashes or its place. Throws Wrong. */
export function parseLine({ number, from, bytes }: Line): LedgerLine {
  const place = { file: LEDGER, line: number };
  const [, canonical = '', head = '', leaf = ''] = FORM.exec(strictText(bytes, place)) ?? [];
  if (canonical === '') throw new Wrong('line-form', place);
  const value = canonicalValue(canonical, place, from + BEFORE_ENTRY);
  try {
    return { canonical, head, leaf, entry: readEntry(new Fields(value, 'entry')) };
  } catch (error) {
    if (error instanceof FieldMissing) throw new Wrong('entry-form', place, { field: error.field });
    throw error;
  }
}

function readEntry(fields: Fields): LedgerEntry {
  const strange = fields.keys.find((key) => !FRAME.includes(key));
  if (strange !== undefined) throw new FieldMissing(strange);
  const by = fields.any('by');
  if (by !== null) fields.object('by').text('id');
  return {
    house: fields.text('house'),
    seq: fields.count('seq'),
    at: fields.instant('at'),
    by: by as JsonObject | null,
    kind: fields.text('kind'),
    version: fields.count('version'),
    payload: fields.object('payload'),
  };
}
