import type { FrameMemberView } from '#domain/contract/frame-views';
import { cornersOf, type Flat } from '#domain/frame/drawing/flat';
import type { DrawnMember, Sheet } from '#domain/frame/drawing/sheet';
import { hiddenOn, missingOn, stageOn, type HiddenState } from '#domain/frame/drawing/state-on';
import { STAGES } from '#domain/frame/stage';
import { without, type Stretch } from '#domain/record/stretches';
import type { FrameModel, HidesMember } from './frame-model.ts';

/** One path each, in the order in which they lie over each other. */
export const INKS = [
  'pale',
  'through',
  'none',
  ...STAGES,
  'held',
  'not-yet',
  'waived',
  'gap',
  'lost',
] as const;
export type Ink = (typeof INKS)[number];
export type Paths = Readonly<Record<Ink, string>>;

/**
 * The whole frame of a sheet as one path an ink: the page keeps a dozen nodes however many members there
 * are, and a day farther is a dozen new strings. `fits`: what does not is pale.
 */
export function inkOf(
  { members, subject }: Sheet,
  model: FrameModel,
  day: string,
  fits: ((mark: string) => boolean) | null = null,
): Paths {
  const parts = Object.fromEntries(INKS.map((ink) => [ink, [] as string[]])) as Record<Ink, string[]>;
  for (const drawn of members) {
    const member = model.members.get(drawn.mark);
    if (!member) continue;
    const isThrough = drawn.cutAt !== null && subject.kind === 'elevation';
    const isPale = fits !== null && !fits(drawn.mark);
    const stage = stageOn(member, day) ?? 'none';
    parts[isPale ? 'pale' : isThrough ? 'through' : stage].push(wholeOf(drawn));
    if (isPale || isThrough) continue;
    for (const hides of model.hides.get(drawn.mark) ?? [])
      inkHidden(parts, drawn, hides, member, day, model.frame.today);
  }
  return Object.fromEntries(INKS.map((ink) => [ink, parts[ink].join('')])) as Record<Ink, string>;
}

const INK_OF = {
  'on-record': 'held',
  'not-yet': 'not-yet',
  gap: 'gap',
  lost: 'lost',
  waived: 'waived',
  // The earlier layer draws it.
  'hidden-before': null,
  retired: null,
} as const satisfies Record<HiddenState, Ink | null>;

function inkHidden(
  parts: Record<Ink, string[]>,
  drawn: DrawnMember,
  { hidden }: HidesMember,
  member: FrameMemberView,
  day: string,
  today: string,
): void {
  const state = hiddenOn(hidden, day);
  const ink = INK_OF[state];
  if (ink === null) return;
  const stretches = hidden.stretches ?? [{ from: 0, to: drawn.length }];
  const isMissing = state === 'gap' || state === 'lost' || state === 'waived';
  const inked = isMissing ? (missingOn(hidden, member, day) ?? stretches) : stretches;
  parts[ink].push(drawnOnce(drawn, inked, shapeOfInk(ink)));
  // Of what is not complete only today is known which parts have a record.
  if (isMissing && day >= today)
    parts.held.push(
      without(stretches, inked)
        .map((one) => shapeOf(drawn, one, middleOf))
        .join(''),
    );
}

type Shape = (drawn: DrawnMember, from: number, to: number) => string;

const kept = new WeakMap<DrawnMember, WeakMap<readonly Stretch[], string>>();

/** Kept: a stretch of a member is drawn the same on every day on which it is drawn in this shape. */
function drawnOnce(drawn: DrawnMember, stretches: readonly Stretch[], shape: Shape): string {
  if (shape !== outlineOf) return stretches.map((stretch) => shapeOf(drawn, stretch, shape)).join('');
  const ofMember = kept.get(drawn) ?? new WeakMap<readonly Stretch[], string>();
  kept.set(drawn, ofMember);
  const path = ofMember.get(stretches) ?? stretches.map((stretch) => shapeOf(drawn, stretch, shape)).join('');
  ofMember.set(stretches, path);
  return path;
}

function shapeOf(drawn: DrawnMember, { from, to }: Stretch, shape: Shape): string {
  if (drawn.cutAt === null) return shape(drawn, from / drawn.length, to / drawn.length);
  return from <= drawn.cutAt && drawn.cutAt <= to ? shape(drawn, 0, 1) : '';
}

const wholes = new WeakMap<DrawnMember, string>();

/** Kept: the outline of a member is the same on every day. */
function wholeOf(drawn: DrawnMember): string {
  const kept = wholes.get(drawn) ?? outlineOf(drawn, 0, 1);
  wholes.set(drawn, kept);
  return kept;
}

const outlineOf: Shape = (drawn, from, to) => `${polyline(cornersOf(drawn, from, to))}Z`;

const middleOf: Shape = ({ from, to }, start, end) => {
  const at = (share: number) => ({
    u: from.u + (to.u - from.u) * share,
    v: from.v + (to.v - from.v) * share,
  });
  return polyline([at(start), at(end)]);
};

/** Struck out: told from what was accepted by its form. */
const struckOf: Shape = (drawn, from, to) => {
  const [a, b, c, d] = cornersOf(drawn, from, to);
  const strokes = a && b && c && d ? polyline([a, c]) + polyline([b, d]) : '';
  return outlineOf(drawn, from, to) + strokes;
};

function shapeOfInk(ink: Ink): Shape {
  if (ink === 'held') return middleOf;
  return ink === 'lost' ? struckOf : outlineOf;
}

/** Whole millimetres are finer than any screen or paper shows. */
export function polyline(points: readonly Flat[]): string {
  return points.map(({ u, v }, i) => `${i === 0 ? 'M' : 'L'}${Math.round(u)} ${Math.round(v)}`).join('');
}
