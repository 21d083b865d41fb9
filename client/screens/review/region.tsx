import type { EvidenceTagView } from '#domain/contract/review-views';
import { outline } from '#domain/photo/region';

/** The region of a tag in a picture of this size, fitted into the same frame so that it lies on it at any size. */
export function Region({ tag, w, h }: { tag: EvidenceTagView['tag']; w: number; h: number }) {
  const points = outline(tag.region)
    .map(([x, y]) => `${x * w},${y * h}`)
    .join(' ');
  return (
    <svg viewBox={`0 0 ${w} ${h}`} aria-hidden="true">
      <polygon className="review-halo" points={points} />
      <polygon className="review-region" points={points} />
    </svg>
  );
}
