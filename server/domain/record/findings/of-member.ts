import { groupBy } from '../../group-by.ts';
import { isInTrack, stageRank, type Track } from '../../frame/stage.ts';
import { compareText } from '../../frame/mark-order.ts';
import { ONE_CLOCK_UNCERTAINTY_MS } from '../certain-order.ts';
import { finding, type Finding, type SeenTag } from './finding.ts';

/** A tag of the member with what its photo says of time and place. */
export interface MemberSighting extends SeenTag {
  /** Epoch milliseconds; null where the photo is undated or its date cannot be. */
  readonly takenMs: number | null;
  readonly uncertaintyMs: number;
  /** See `clockOf`. */
  readonly clock: string | null;
  /** Who doubted it last, and why. */
  readonly disputed: { readonly at: string; readonly by: string; readonly reason: string } | null;
  readonly position: { readonly lat: number; readonly lon: number; readonly errorM: number } | null;
}

export interface MemberEvidence {
  readonly mark: string;
  /** Whether the schedule has the mark. */
  readonly known: boolean;
  readonly track: Track;
  readonly sightings: readonly MemberSighting[];
}

/** How far a photo's place and the member that it shows may lie apart, and how fast nothing gets from place to place. */
export const PLACES_AT_ONCE = { withinMs: 60_000, reachM: 100 } as const;

export type Distance = (a: { lat: number; lon: number }, b: { lat: number; lon: number }) => number;

/** What the tags of one member say against each other (design 3.5). `distance` in metres. */
export function findingsOfMember(member: MemberEvidence, distance: Distance): Finding[] {
  const { mark, known, sightings } = member;
  if (sightings.length === 0) return [];
  const disputed = sightings.flatMap((seen) =>
    seen.disputed ? [finding('disputed', [seen.tag], { tags: [seen], facts: { ...seen.disputed } })] : [],
  );
  if (!known) return [...disputed, finding('unknown-mark', [mark], { tags: sightings })];
  return [
    ...disputed,
    ...stageGoesBack(mark, sightings),
    ...stagesAtOnce(mark, sightings),
    ...placesAtOnce(mark, sightings, distance),
    ...sightings
      .filter(({ stage }) => !isInTrack(stage, member.track))
      .map((seen) =>
        finding('stage-outside-track', [seen.tag], { tags: [seen], facts: { track: member.track } }),
      ),
  ];
}

type Dated = MemberSighting & { readonly takenMs: number };

/**
 * All tags of a pair of which the one taken certainly earlier, beyond both uncertainties or by one and the
 * same clock, shows a later stage. One finding a member: which is wrong a person must say. O(n log n).
 */
function stageGoesBack(mark: string, sightings: readonly MemberSighting[]): Finding[] {
  const dated = sightings.filter((seen): seen is Dated => seen.takenMs !== null);
  const involved = contradicting(dated);
  for (const [clock, own] of groupBy(dated, (seen) => seen.clock))
    if (clock !== null && own.length > 1)
      for (const seen of contradicting(
        own.map((one) => ({ ...one, uncertaintyMs: ONE_CLOCK_UNCERTAINTY_MS })),
      ))
        involved.add(seen);
  const tags = dated.filter(({ tag }) => involved.has(tag)).toSorted(byTime);
  return tags.length === 0 ? [] : [finding('stage-goes-back', [mark], { tags })];
}

/** The tags that another one contradicts whose time is certainly before or after. */
function contradicting(dated: readonly Dated[]): Set<string> {
  const ends = dated.toSorted((a, b) => latest(a) - latest(b));
  const starts = dated.toSorted((a, b) => earliest(b) - earliest(a));
  // A tag is behind when a certainly earlier one is further on, and ahead when a certainly later one is less far.
  const behind = sweep(
    dated.toSorted((a, b) => earliest(a) - earliest(b)),
    ends,
    {
      isBefore: (other, seen) => latest(other) < earliest(seen),
      furthest: Math.max,
      contradicts: (rank, seen) => rank > stageRank(seen.stage),
      none: -Infinity,
    },
  );
  const ahead = sweep(
    dated.toSorted((a, b) => latest(b) - latest(a)),
    starts,
    {
      isBefore: (other, seen) => earliest(other) > latest(seen),
      furthest: Math.min,
      contradicts: (rank, seen) => rank < stageRank(seen.stage),
      none: Infinity,
    },
  );
  return new Set([...behind, ...ahead].map(({ tag }) => tag));
}

const earliest = ({ takenMs, uncertaintyMs }: Dated) => takenMs - uncertaintyMs;
const latest = ({ takenMs, uncertaintyMs }: Dated) => takenMs + uncertaintyMs;
const byTime = (a: Dated, b: Dated) => a.takenMs - b.takenMs || compareText(a.tag, b.tag);

interface Sweep {
  readonly isBefore: (other: Dated, seen: Dated) => boolean;
  readonly furthest: (a: number, b: number) => number;
  readonly contradicts: (rank: number, seen: Dated) => boolean;
  readonly none: number;
}

/** Those whose stage contradicts the furthest stage of all `others` that certainly come before them in the sweep. */
function sweep(seen: readonly Dated[], others: readonly Dated[], rule: Sweep): Set<Dated> {
  const found = new Set<Dated>();
  let rank = rule.none;
  let i = 0;
  for (const one of seen) {
    for (let other = others[i]; other && rule.isBefore(other, one); other = others[++i])
      rank = rule.furthest(rank, stageRank(other.stage));
    if (rule.contradicts(rank, one)) found.add(one);
  }
  return found;
}

/** Several regions of one photo may show one member, but only at one stage. */
function stagesAtOnce(mark: string, sightings: readonly MemberSighting[]): Finding[] {
  const photos = groupBy(sightings, ({ photo }) => photo);
  return [...photos]
    .filter(([, tags]) => new Set(tags.map(({ stage }) => stage)).size > 1)
    .map(([photo, tags]) => finding('stages-at-once', [mark, photo], { tags }));
}

/** Two photos within a minute from places further apart than their errors and the reach of a camera. */
function placesAtOnce(mark: string, sightings: readonly MemberSighting[], distance: Distance): Finding[] {
  const placed = sightings
    .filter(
      (seen): seen is Dated & { position: NonNullable<MemberSighting['position']> } =>
        seen.takenMs !== null && seen.position !== null,
    )
    .toSorted(byTime);
  const involved = new Set<MemberSighting>();
  let furthest = 0;
  placed.forEach((a, i) => {
    for (const b of placed.slice(i + 1)) {
      if (b.takenMs - a.takenMs > PLACES_AT_ONCE.withinMs) break;
      const apart = distance(a.position, b.position);
      if (apart <= a.position.errorM + b.position.errorM + PLACES_AT_ONCE.reachM) continue;
      involved.add(a).add(b);
      furthest = Math.max(furthest, apart);
    }
  });
  if (involved.size === 0) return [];
  const tags = placed.filter((seen) => involved.has(seen));
  return [finding('places-at-once', [mark], { tags, facts: { distance: Math.round(furthest) } })];
}
