import type { Change } from './live-house.ts';

/** What the screens show of a house, in parts that are read by themselves. */
export const HOUSE_DATA = [
  'facts',
  'ground',
  'people',
  'members',
  'photos',
  'photo',
  'coverings',
  'report',
  'findings',
  'days',
  'ledger',
] as const;
export type HouseData = (typeof HOUSE_DATA)[number];

/** A part, and where only one photo has touched it, which: of photos that one, of the report the members tagged on it. */
export interface Touched {
  readonly part: HouseData;
  readonly photo: string | null;
}

const TAGGED: readonly HouseData[] = [
  'photo',
  'photos',
  'facts',
  'members',
  'days',
  'report',
  'findings',
  'ledger',
];
const DATED: readonly HouseData[] = ['photo', 'photos', 'members', 'days', 'report', 'findings', 'ledger'];

const LAID: readonly HouseData[] = ['coverings', 'members', 'days', 'report', 'findings', 'ledger'];

/** What the frequent statements can change. Those that are not named here can change anything. */
const TOUCHES: Readonly<Record<string, readonly HouseData[]>> = {
  'tag.placed': TAGGED,
  'tag.superseded': TAGGED,
  'tag.withdrawn': TAGGED,
  'photo.added': ['photo', 'photos', 'facts', 'days', 'findings', 'ledger'],
  'photo.position-added': ['photo', 'photos', 'days', 'ledger'],
  'photo.dated': DATED,
  'photo.dating-withdrawn': DATED,
  'note.written': ['days', 'ledger'],
  'head.stamped': ['days', 'ledger'],
  'protection.laid': LAID,
  'protection.changed': LAID,
  'protection.lifted': LAID,
  'protection.lifting-withdrawn': LAID,
  'protection.withdrawn': LAID,
};
const MADE = {
  pictures: ['photo', 'photos', 'days', 'findings'],
  /** What can be read counts in the report, in the journal's gaps and in histories. */
  legibility: ['photo', 'members', 'report', 'days', 'findings'],
} as const satisfies Readonly<Record<string, readonly HouseData[]>>;

/**
 * Of the report these change no more than the members on their photo. The time of a photo is compared with those
 * of others that are nearly the same picture, and so with the members on them.
 */
const OF_ONE_PHOTO: ReadonlySet<string> = new Set([
  'tag.placed',
  'tag.superseded',
  'tag.withdrawn',
  'legibility',
]);

export function touchedBy(change: Change): Touched[] {
  const parts = change.type === 'statement' ? TOUCHES[change.kind] : MADE[change.type];
  const isOfOne = OF_ONE_PHOTO.has(change.type === 'statement' ? change.kind : change.type);
  return (parts ?? HOUSE_DATA).map((part) => ({
    part,
    photo: parts && (part === 'photo' || (part === 'report' && isOfOne)) ? change.photo : null,
  }));
}

export const EVERYTHING: readonly Touched[] = HOUSE_DATA.map((part) => ({ part, photo: null }));
