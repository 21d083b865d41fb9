import { z } from 'zod';
import type { ReleasedMember } from '#domain/contract/hold';
import type { ReleaseView } from '#domain/contract/review-views';
import { MarkShape } from '#domain/contract/shapes';
import type { LedgerEntryView } from '#domain/contract/views';
import type { RecordReader } from './record-store.ts';

type Doubt = ReleaseView['doubtsSince'][number];

const OfTag = z.object({ mark: MarkShape, reason: z.string() });
const Answered = z.object({
  findings: z.array(z.object({ kind: z.string(), marks: z.array(MarkShape) })),
  reason: z.string(),
});
const Reopened = z.object({ marks: z.array(MarkShape), reason: z.string() });

/** Doubts of what a release speaks of, and the answers to them, that came after it, in order. */
export async function doubtsSince(
  read: RecordReader,
  { house, hides, seq }: { house: string; hides: readonly ReleasedMember[]; seq: number },
): Promise<Doubt[]> {
  const marks = new Set<string>(hides.map(({ mark }) => mark));
  const said = await read.doubtsAbout(house, [...marks]);
  return said
    .filter((entry) => entry.seq > seq)
    .flatMap(toDoubts)
    .filter(({ mark }) => marks.has(mark));
}

function toDoubts({ at, by, kind, payload }: LedgerEntryView): Doubt[] {
  if (kind === 'tag.disputed') return [{ ...OfTag.parse(payload), at, by, what: 'doubted' }];
  if (kind === 'finding.reopened') {
    const { marks, reason } = Reopened.parse(payload);
    return marks.map((mark) => ({ mark, reason, at, by, what: 'reopened' }));
  }
  const { findings, reason } = Answered.parse(payload);
  return findings
    .filter((finding) => finding.kind === 'disputed')
    .flatMap(({ marks }) => marks.map((mark) => ({ mark, reason, at, by, what: 'answered' as const })));
}
