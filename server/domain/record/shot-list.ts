import type { Convex, Triple } from '../frame/clip.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { groupBy } from '../group-by.ts';
import { bayPieces } from './bay-pieces.ts';
import { looksOf, type Look } from './look.ts';
import { greedyCover } from './set-cover.ts';
import type { Point } from '../frame/set-out.ts';
import {
  FARTHEST_MM,
  sightThrough,
  targetOf,
  tripleOf,
  type FrameMember,
  type Sight,
  type Target,
} from './sight.ts';
import { standingPlaces, type StandingPlace } from './standing-places.ts';
import { unionOf, type Stretch } from './stretches.ts';
import { walkThrough, type Spot } from './walk.ts';

/** A hidden stretch without a record: of which member, for which covering, and on which day that closes. */
export interface MissingStretch extends FrameMember {
  readonly covering: string;
  readonly stretch: Stretch;
  readonly closes: string | null;
}

export interface ShotListInput {
  readonly reader: GridReader;
  readonly missing: readonly MissingStretch[];
  /** What has closed (frame/opaque-body). */
  readonly opaque: readonly Convex[];
  /** The frame as it stands; what is not raised yet hides nothing and is left out by the caller. */
  readonly members: readonly FrameMember[];
  /** Where somebody can stand without boards or a scaffold; all other places only show what no such place does. */
  readonly isFirm?: (place: StandingPlace) => boolean;
}

export interface Shot {
  readonly mark: string;
  readonly covering: string;
  readonly stretches: readonly Stretch[];
  readonly closes: string | null;
}

export interface ShotPlace extends StandingPlace {
  /** Where most of it is seen first. */
  readonly looks: readonly Look[];
  /** The earliest day on which something of it is hidden. */
  readonly closes: string | null;
  /** In the order in which the missing stretches were given; each piece stands at one place only. */
  readonly shots: readonly Shot[];
}

export interface UnseenShot extends Shot {
  /** No place near enough at an angle; or something stands or has closed before it on all sides. */
  readonly reason: 'out-of-reach' | 'blocked';
}

export interface ShotList {
  readonly places: readonly ShotPlace[];
  readonly unseen: readonly UnseenShot[];
}

interface Piece {
  readonly of: number;
  readonly stretch: Stretch;
  readonly target: Target;
}

/**
 * What is missing, grouped by standing place and in the order of one walk, level by level from the lowest: few
 * places that together see every piece which any place sees (record/set-cover). What no place sees is told apart.
 * Days and marks as given, lengths in mm. The same input gives the same list.
 */
export function shotList({ reader, missing, opaque, members, isFirm }: ShotListInput): ShotList {
  const pieces = missing.flatMap((one, of): Piece[] =>
    bayPieces(one.axis, one.stretch, reader.grid).map((stretch) => ({
      of,
      stretch,
      target: targetOf(one, stretch),
    })),
  );
  const sight = sightThrough(opaque, members);
  const places = standingPlaces(reader).filter(({ eye }) => sight.hasRoom(eye));
  const { seen, isBlocked } = lookAround(places, pieces, sight, isFirm ?? (() => true));
  const chosen = greedyCover(seen, pieces.length);
  const best = bestPlaces(chosen, seen, places, pieces);
  const groups = groupBy([...best.keys()], (piece) => best.get(piece));
  const shown = chosen.map((number): ShotPlace => {
    const place = places[number] as StandingPlace;
    const own = (groups.get(number) ?? []).sort((a, b) => a - b).map((piece) => pieces[piece] as Piece);
    const shots = shotsOf(own, missing);
    return {
      ...place,
      looks: looksOf(
        place.eye,
        own.map(({ target }) => target.middle),
        reader.grid,
      ),
      closes: earliest(shots),
      shots,
    };
  });
  const unseen = pieces.map((piece, i) => ({ piece, i })).filter(({ i }) => !best.has(i));
  return {
    places: inOrderOfWalk(shown, reader),
    unseen: (['blocked', 'out-of-reach'] as const).flatMap((reason) =>
      shotsOf(
        unseen.filter(({ i }) => isBlocked.has(i) === (reason === 'blocked')).map(({ piece }) => piece),
        missing,
      ).map((shot) => ({ ...shot, reason })),
    ),
  };
}

/** Firm places first: what any of them shows is left to those, and no other place is asked for it. */
function lookAround(
  places: readonly StandingPlace[],
  pieces: readonly Piece[],
  sight: Sight,
  isFirm: (place: StandingPlace) => boolean,
) {
  const isBlocked = new Set<number>();
  const seen: number[][] = places.map(() => []);
  const lookFrom = (firm: boolean, near: Near) => {
    for (const [number, place] of places.entries())
      if (isFirm(place) === firm)
        seen[number] = near(place.eye).filter((piece) => {
          const found = sight.look(place.eye, (pieces[piece] as Piece).target);
          if (found === 'blocked') isBlocked.add(piece);
          return found === 'seen';
        });
  };
  lookFrom(true, nearPieces(pieces, [...pieces.keys()]));
  const fromFirm = new Set(seen.flat());
  lookFrom(
    false,
    nearPieces(
      pieces,
      [...pieces.keys()].filter((piece) => !fromFirm.has(piece)),
    ),
  );
  return { seen, isBlocked };
}

/** Pieces that may be near enough to an eye, by their numbers, ascending. */
type Near = (eye: Point) => number[];

/** In strips along x as wide as one sees: what is near lies in one's own and those beside it. */
function nearPieces(pieces: readonly Piece[], numbers: readonly number[]): Near {
  const middle = (number: number) => (pieces[number] as Piece).target.middle;
  const strips = groupBy(numbers, (number) => Math.floor(middle(number)[0] / FARTHEST_MM));
  return ({ x, y }) => {
    const strip = Math.floor(x / FARTHEST_MM);
    return [strip - 1, strip, strip + 1]
      .flatMap((at) => strips.get(at) ?? [])
      .filter((number) => Math.abs(middle(number)[1] - y) <= FARTHEST_MM)
      .sort((a, b) => a - b);
  };
}

/** Of each piece the chosen place that sees it from nearest. */
function bestPlaces(
  chosen: readonly number[],
  seen: readonly (readonly number[])[],
  places: readonly StandingPlace[],
  pieces: readonly Piece[],
): Map<number, number> {
  const best = new Map<number, { place: number; far: number }>();
  for (const place of chosen)
    for (const piece of seen[place] ?? []) {
      const far = distance(
        tripleOf((places[place] as StandingPlace).eye),
        (pieces[piece] as Piece).target.middle,
      );
      if (far < (best.get(piece)?.far ?? Infinity)) best.set(piece, { place, far });
    }
  return new Map([...best].map(([piece, { place }]) => [piece, place]));
}

const distance = (a: Triple, b: Triple) => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);

/** Pieces of one missing stretch are one shot again. */
function shotsOf(pieces: readonly Piece[], missing: readonly MissingStretch[]): Shot[] {
  return [...groupBy(pieces, ({ of }) => of)].map(([of, own]) => {
    const { mark, covering, closes } = missing[of] as MissingStretch;
    return { mark, covering, closes, stretches: unionOf(own.map(({ stretch }) => stretch)) };
  });
}

function earliest(shots: readonly Shot[]): string | null {
  const days = shots.flatMap(({ closes }) => closes ?? []);
  return days.reduce<string | null>((first, day) => (first === null || day < first ? day : first), null);
}

/** Begins where the first lines cross; on each further level from where the last one was left. */
function inOrderOfWalk(places: readonly ShotPlace[], { grid }: GridReader): ShotPlace[] {
  let here: Spot = { x: grid.first.lines[0]?.at ?? 0, y: grid.second.lines[0]?.at ?? 0 };
  const byHeight = [...groupBy(places, ({ eye }) => eye.z)].sort(([a], [b]) => a - b);
  return byHeight.flatMap(([, level]) => {
    const walk = walkThrough(
      level.map(({ eye }) => eye),
      here,
    ).map((number) => level[number] as ShotPlace);
    here = walk.at(-1)?.eye ?? here;
    return walk;
  });
}
