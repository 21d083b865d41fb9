import type { ReleaseView } from '../../contract/review-views.ts';

/** Where anybody can check a release against exported files; `origin` without a slash at its end. */
export function checkAddress(origin: string, { id, head }: Pick<ReleaseView, 'id' | 'head'>): string {
  return `${origin}/check?release=${id}&head=${head.hash}&size=${head.size}`;
}
