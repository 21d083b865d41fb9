import { refreshAllFindings } from './findings/refresh.ts';
import type { StoredLine } from './ledger-file.ts';
import { LedgerWriter, lockLedger, type LedgerLine } from './ledger-store.ts';
import type { Tx } from './tx.ts';

type Lines = Iterable<StoredLine> | AsyncIterable<StoredLine>;

/**
 * Says again what was said elsewhere, entry by entry by its exact text, and holds each head against the one that was
 * written then. `from` gives the lines behind those that the ledger has. Throws LedgerMismatch.
 */
export async function appendLines(
  tx: Tx,
  house: string,
  from: (size: number) => Lines,
): Promise<readonly LedgerLine[]> {
  const frontier = await lockLedger(tx, house);
  if (!frontier) return [];
  const writer = new LedgerWriter(tx, house, frontier);
  for await (const { canonical, head } of from(frontier.size)) {
    await writer.append(canonical);
    const written = writer.written.at(-1);
    if (!written || Buffer.from(written.head).toString('hex') !== head)
      throw new LedgerMismatch(house, writer.nextSeq - 1);
  }
  if (writer.written.length > 0) await refreshAllFindings(tx, house);
  return writer.written;
}

export class LedgerMismatch extends Error {
  constructor(house: string, seq: number) {
    super(
      `The ledger file of house ${house} and the database differ at entry ${seq}. ` +
        'One of them was altered or belongs to another copy. Nothing was changed. ' +
        'Put back the ledger file from a backup, or move the database folder away to have it made anew from the file.',
    );
  }
}
