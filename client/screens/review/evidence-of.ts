import type { EvidenceTagView, ReviewLineView, ReviewView } from '#domain/contract/review-views';

/** A tag that speaks for a member, or comes nearest to it, with what the report says of it. */
export type Shown = EvidenceTagView & { readonly told: ReviewLineView['records'][number] };

/** The records of a line, the best first; of a gap, after what counts of it, the nearest miss. */
export function evidenceOf({ evidence }: Pick<ReviewView, 'evidence'>, line: ReviewLineView): Shown[] {
  const told = [...line.records, ...(line.nearestMiss?.tag ? [line.nearestMiss.tag] : [])];
  return told.flatMap((one, i) => {
    if (told.findIndex(({ tag }) => tag === one.tag) !== i) return [];
    const found = evidence.find(({ tag }) => tag.id === one.tag);
    return found ? [{ ...found, told: one }] : [];
  });
}
