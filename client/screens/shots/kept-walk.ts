import type { ShotListView } from '#domain/contract/shot-views';
import type { KeyValueStorage } from '../../outbox/browser-storage.ts';

export type Days = number | 'all';

/** The number is that of its form: a walk that an older version of this program kept is not read. */
const PREFIX = 'arakabe.walk.2.';
const keyOf = (house: string, days: Days) => `${PREFIX}${house}.${String(days)}`;

/** The walk as it was ordered stays as long as the window lives, whatever screens lie between. */
export function keepWalk(storage: KeyValueStorage | null, house: string, days: Days, walk: ShotListView) {
  try {
    storage?.setItem(keyOf(house, days), JSON.stringify(walk));
  } catch {
    // Full or forbidden: the walk then lasts until the screen is left.
  }
}

export function readWalk(storage: KeyValueStorage | null, house: string, days: Days): ShotListView | null {
  try {
    const value: unknown = JSON.parse(storage?.getItem(keyOf(house, days)) ?? 'null');
    return isWalk(value) ? value : null;
  } catch {
    return null;
  }
}

function isWalk(value: unknown): value is ShotListView {
  if (typeof value !== 'object' || value === null) return false;
  const walk = value as Partial<Record<keyof ShotListView, unknown>>;
  return (
    typeof walk.today === 'string' &&
    [walk.places, walk.unseen, walk.placeless, walk.coverings, walk.asked, walk.lying].every(Array.isArray)
  );
}

/** A walk is of one day and of one grid: tomorrow, or where lines have moved, it is ordered anew unasked. */
export function isOfNow(walk: ShotListView, now: ShotListView): boolean {
  return walk.today === now.today && JSON.stringify(walk.grid) === JSON.stringify(now.grid);
}
