import type { ReleaseView } from '../../contract/review-views.ts';

/**
 * Where anybody can check a release against exported files; `origin` without a slash at its end. It has the
 * head over the release's own entry: under the one that the release names its own words do not lie.
 */
export function checkAddress(
  origin: string,
  { id, seq, headAfter }: Pick<ReleaseView, 'id' | 'seq' | 'headAfter'>,
): string {
  return `${origin}/check?release=${id}&head=${headAfter}&size=${seq + 1}`;
}
