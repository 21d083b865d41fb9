import { z } from 'zod';
import { Lacking } from '#domain/contract/hold';
import type { ReleaseView } from '#domain/contract/review-views';
import { coveringSubject } from '#domain/ledger/subjects';
import type { RecordReader } from './record-store.ts';

const Refused = z.object({ lacking: z.array(Lacking), note: z.string() });

/** What inspectors found missing of a covering before an entry of the ledger, in order. */
export async function refusalsBefore(
  read: RecordReader,
  { house, covering, seq }: { house: string; covering: string; seq: number },
): Promise<ReleaseView['refusals']> {
  const said = await read.entriesAbout(house, coveringSubject(covering));
  return said
    .filter((entry) => entry.kind === 'covering.refused' && entry.seq < seq)
    .map(({ at, by, payload }) => ({ at, by, ...Refused.parse(payload) }));
}
