import type { AskedLineView, ShotListView, ShotView } from '#domain/contract/shot-views';
import { meets, without, type Stretch } from '#domain/record/stretches';

export const allShots = ({ places, unseen, placeless }: ShotListView): ShotView[] => [
  ...places.flatMap(({ turns }) => turns.flatMap(({ shots }) => shots)),
  ...unseen,
  ...placeless,
];

/**
 * 'open': still to be photographed; 'lost': hidden without a record; 'unasked': nobody asks for it any more, or a
 * release accepts that it has no record.
 */
export type ShotState = 'open' | 'on-record' | 'lost' | 'unasked';

/** What decides first, of parts and of coverings alike. */
const BY_WEIGHT = ['open', 'lost', 'on-record'] as const;

const weightiest = (states: readonly ShotState[]): ShotState =>
  BY_WEIGHT.find((state) => states.includes(state)) ?? 'unasked';

/** How members stand for coverings, by both. */
export type Asked = ReadonlyMap<string, AskedLineView>;

const keyOf = (mark: string, covering: string) => `${covering} ${mark}`;

export const askedIn = ({ asked }: ShotListView): Asked =>
  new Map(asked.flatMap(({ id, lines }) => lines.map((line) => [keyOf(line.mark, id), line] as const)));

/** One piece, of whatever length. */
const WHOLE: Stretch = { from: 0, to: Infinity };

const partsOf = ({ stretches }: Pick<ShotView, 'stretches'>): readonly Stretch[] =>
  stretches.length > 0 ? stretches : [WHOLE];

/** What a walk's shot has come to for one of its coverings, as the record says now. */
export function stateFor(covering: string, shot: ShotView, asked: Asked): ShotState {
  const line = asked.get(keyOf(shot.mark, covering));
  return line ? weightiest(partsOf(shot).map((part) => stateOfPart(part, line))) : 'unasked';
}

export const stateOfShot = (shot: ShotView, asked: Asked): ShotState =>
  weightiest(shot.coverings.map((covering) => stateFor(covering, shot, asked)));

function stateOfPart(part: Stretch, { state, hidden, missing, lostBefore }: AskedLineView): ShotState {
  if (state === 'retired' || (hidden && !meets(part, [hidden]))) return 'unasked';
  if (state === 'hidden-before') return 'lost';
  const isMissing = missing.length === 0 || meets(part, missing);
  if (state === 'waived' && isMissing) return 'unasked';
  if (state === 'gap' && isMissing) return 'open';
  if ((state === 'lost' && isMissing) || meets(part, lostBefore)) return 'lost';
  return 'on-record';
}

/** What protection lies over a shot today: of several what was laid first. */
export function lyingOver(
  shot: ShotView,
  { lying }: ShotListView,
): ShotListView['lying'][number] | undefined {
  return lying.find(
    ({ mark, stretch }) =>
      mark === shot.mark && (stretch === null || partsOf(shot).some((part) => meets(part, [stretch]))),
  );
}

/** Names of what has closed since the walk was ordered: its places may face a wall by now. */
export function closedSince(walk: ShotListView, now: ShotListView): string[] {
  const before = new Set(walk.asked.filter(({ hasClosed }) => hasClosed).map(({ id }) => id));
  return now.asked.filter(({ id, hasClosed }) => hasClosed && !before.has(id)).map(({ name }) => name);
}

/** How many shots of the list as it is now show anything that does not stand in the walk. */
export function addedSince(walk: ShotListView, now: ShotListView): number {
  const known = new Map<string, Stretch[]>();
  for (const shot of allShots(walk))
    for (const covering of shot.coverings) {
      const key = keyOf(shot.mark, covering);
      known.set(key, [...(known.get(key) ?? []), ...partsOf(shot)]);
    }
  return allShots(now).filter((shot) =>
    shot.coverings.some((covering) => {
      const before = known.get(keyOf(shot.mark, covering));
      return before === undefined || without(partsOf(shot), before).length > 0;
    }),
  ).length;
}
