import type { LedgerEntryView } from '#domain/contract/views';
import { coveringSubject } from '#domain/ledger/subjects';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** All that was ever said of a covering, in order, with the doubts of what it hides and the answers to them. */
export async function readSaidOfCovering(
  { store: { read } }: Context,
  house: string,
  covering: string,
): Promise<LedgerEntryView[]> {
  const view = await read.covering(covering);
  if (!view) throw new Failure('not-found', { what: 'covering' });
  const own = await read.entriesAbout(house, coveringSubject(covering));
  const doubts = await read.doubtsAbout(
    house,
    view.hides.map(({ mark }) => mark),
  );
  return [...own, ...doubts].sort((a, b) => a.seq - b.seq);
}
