import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import { meets, without, type Stretch } from '#domain/record/stretches';

export const allShots = ({ places, unseen, placeless }: ShotListView): ShotView[] => [
  ...places.flatMap(({ turns }) => turns.flatMap(({ shots }) => shots)),
  ...unseen,
  ...placeless,
];

/** What of each member is missing for each covering; a member without a place in space is missing as a whole. */
export type Missing = ReadonlyMap<string, readonly Stretch[] | 'whole'>;

const keyOf = ({ mark, covering }: ShotView) => `${covering} ${mark}`;

export function missingIn(list: ShotListView): Missing {
  const missing = new Map<string, readonly Stretch[] | 'whole'>();
  for (const shot of allShots(list)) {
    const before = missing.get(keyOf(shot)) ?? [];
    const isWhole = before === 'whole' || shot.stretches.length === 0;
    missing.set(keyOf(shot), isWhole ? 'whole' : [...before, ...shot.stretches]);
  }
  return missing;
}

/** Whether nothing of a shot is missing any more. */
export function isTaken(shot: ShotView, now: Missing): boolean {
  const left = now.get(keyOf(shot));
  if (left === undefined) return true;
  return left !== 'whole' && shot.stretches.every((stretch) => !meets(stretch, left));
}

/** How many shots of the list as it is now show anything that does not stand in the walk. */
export function addedSince(walk: ShotListView, now: ShotListView): number {
  const known = missingIn(walk);
  return allShots(now).filter((shot) => {
    const before = known.get(keyOf(shot));
    if (before === undefined) return true;
    return before !== 'whole' && without(shot.stretches, before).length > 0;
  }).length;
}
