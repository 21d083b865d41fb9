import type { Stretch } from '../record/stretches.ts';
import type { Axis } from './set-out.ts';
import type { WallFigure } from './wall-rules.ts';

/** A member with the stretch of it (mm from its start) that lies in the wall. */
export interface InWall {
  readonly mark: string;
  readonly axis: Axis;
  readonly stretch: Stretch;
}

/** What was found of one rule, before what has no place is thought of. */
export interface Finding {
  readonly figure: WallFigure;
  readonly measured: number | null;
  readonly isWithin: boolean;
  readonly because: 'none-in-schedule' | 'place-unknown' | 'section-assumed' | 'reading' | null;
  readonly looked: readonly string[];
  readonly differing: readonly string[];
}

export const nothing = (figure: WallFigure): Finding => ({
  figure,
  measured: null,
  isWithin: false,
  because: 'none-in-schedule',
  looked: [],
  differing: [],
});

export const marksOf = (members: readonly InWall[]) => members.map(({ mark }) => mark);
const isAssumed = ({ axis }: InWall) => axis.assumed.includes('section');

/** The thinnest of them, by the smaller or the larger side of a section, whichever way round it is stated (mm). */
export function leastSection(
  members: readonly InWall[],
  figure: WallFigure,
  side: (width: number, depth: number) => number,
): Finding {
  return thinnest(
    members.map((member) => ({ member, size: side(member.axis.width, member.axis.depth), figure })),
    figure,
  );
}

/** As wide as thick is taken for round, all else for split: a schedule does not say which. */
export function carrierSize(members: readonly InWall[], split: WallFigure, round: WallFigure): Finding {
  return thinnest(
    members.map((member) => {
      const { width, depth } = member.axis;
      return { member, size: Math.max(width, depth), figure: width === depth ? round : split };
    }),
    split,
  );
}

interface Sized {
  readonly member: InWall;
  readonly size: number;
  readonly figure: WallFigure;
}

/** A section that nobody stated is no measurement; one that is stated and too thin is, whatever the others are. */
function thinnest(all: readonly Sized[], figure: WallFigure): Finding {
  if (all.length === 0) return nothing(figure);
  const stated = all.filter(({ member }) => !isAssumed(member));
  const looked = marksOf(all.map(({ member }) => member));
  const [worst] = [...stated].sort((a, b) => a.size - a.figure.limit - (b.size - b.figure.limit));
  const differing = stated.filter((one) => one.size < one.figure.limit);
  return {
    figure: worst?.figure ?? figure,
    measured: worst?.size ?? null,
    isWithin: differing.length === 0,
    because: differing.length === 0 && stated.length < all.length ? 'section-assumed' : null,
    looked,
    differing: marksOf(differing.map(({ member }) => member)),
  };
}
