import { compareText } from '../../frame/mark-order.ts';
import { finding, type Finding, type SeenTag } from './finding.ts';

export interface PictureEvidence {
  readonly photo: string;
  /** Epoch milliseconds; null where the photo has no date. */
  readonly takenMs: number | null;
  readonly uncertaintyMs: number;
  readonly tags: readonly SeenTag[];
}

/** Pictures of one moment are a burst and no contradiction. Common practice. */
const ONE_MOMENT_MS = 10 * 60_000;

/**
 * Nearly the same picture with another time: a copy that was saved again, or a picture taken off a screen.
 * `bits` is the distance of their perceptual hashes.
 */
export function findingOfPair(a: PictureEvidence, b: PictureEvidence, bits: number): Finding | null {
  // As long as nothing rests on them, pictures may be alike: a clock that is photographed every week.
  if (a.tags.length + b.tags.length === 0) return null;
  if (a.takenMs === null && b.takenMs === null) return null;
  if (a.takenMs !== null && b.takenMs !== null) {
    const apart = Math.abs(a.takenMs - b.takenMs) - a.uncertaintyMs - b.uncertaintyMs;
    if (apart <= ONE_MOMENT_MS) return null;
  }
  const [first, second] = compareText(a.photo, b.photo) < 0 ? [a, b] : [b, a];
  return finding('same-picture', [first.photo, second.photo], {
    photos: [first.photo, second.photo],
    tags: [...first.tags, ...second.tags],
    facts: { bits, ...timeFact('one', first), ...timeFact('other', second) },
  });
}

function timeFact(name: string, { takenMs }: PictureEvidence): Finding['facts'] {
  return takenMs === null ? {} : { [name]: new Date(takenMs).toISOString() };
}
