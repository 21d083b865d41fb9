import { z } from 'zod';
import type { LedgerEntryView } from '#domain/contract/views';
import { coveringSubject, memberSubject } from '#domain/ledger/subjects';
import type { RecordReader } from './record-store.ts';

const OfRelease = z.object({ release: z.string(), covering: z.string() });

/** All that was said of a member, in order; that a release which speaks of it was taken back names no member. */
export async function readSaidOfMember(
  read: RecordReader,
  house: string,
  mark: string,
): Promise<LedgerEntryView[]> {
  const own = await read.entriesAbout(house, memberSubject(mark));
  const given = own.flatMap(({ kind, payload }) =>
    kind === 'covering.released' ? [OfRelease.parse(payload)] : [],
  );
  if (given.length === 0) return own;
  const releases = new Set(given.map(({ release }) => release));
  const coverings = [...new Set(given.map(({ covering }) => covering))];
  const about = await Promise.all(coverings.map((id) => read.entriesAbout(house, coveringSubject(id))));
  const back = about
    .flat()
    .filter(
      ({ kind, payload }) => kind === 'release.withdrawn' && releases.has(OfRelease.parse(payload).release),
    );
  return [...own, ...back].sort((a, b) => a.seq - b.seq);
}
