import type { Shown } from './evidence-of.ts';

type Evidence = Pick<Shown, 'tag'>;

/**
 * Which of a member's records, the best first, are looked at before it is said to be seen: as many that show all of
 * it as are asked for, where they do not all of them, and whatever was doubted.
 */
export function recordsToSee<E extends Evidence>(evidence: readonly E[], views: number): readonly E[] {
  let whole = 0;
  return evidence.filter(({ tag }) => {
    const isNeeded = whole < views || tag.disputed !== null;
    if (tag.stretch === null) whole += 1;
    return isNeeded;
  });
}
