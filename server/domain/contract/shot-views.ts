import { z } from 'zod';
import { FOOTINGS } from '../record/footing.ts';
import { GridShape, StretchShape } from './frame-shapes.ts';
import { LINE_STATES, MISS_REASONS, NamedStretch } from './report-views.ts';
import { CoveringFacts, Day, Id, Instant, MarkShape, StageShape } from './shapes.ts';

/** Where to stand for the photos that are missing, in the order of one walk. */

const PlanPoint = z.object({ x: z.number(), y: z.number() });
const FamilyShape = z.enum(['first', 'second']);

export const ShotView = z.object({
  mark: MarkShape,
  kind: z.string(),
  place: z.string(),
  coverings: z
    .array(Id)
    .min(1)
    .meta({ description: 'For which this is asked, what closes first first: one photo does for all.' }),
  stretches: z
    .array(NamedStretch.extend({ start: PlanPoint, end: PlanPoint }))
    .meta({ description: 'What is to be photographed, with its ends in plan; empty: all of the member.' }),
  whole: z.boolean().meta({ description: 'Whether these are all that is hidden of it.' }),
  least: StageShape,
  views: z.int().meta({ description: 'Photos that must show each part of it.' }),
  nearestMiss: z.enum(MISS_REASONS).nullable().meta({ description: 'Why nothing counts yet.' }),
});
export type ShotView = z.infer<typeof ShotView>;

const LookShape = z
  .union([z.object({ family: FamilyShape, line: z.string() }), z.enum(['up', 'down'])])
  .meta({ description: 'Towards which line, or up or down.' });
export type LookView = z.infer<typeof LookShape>;

export const ShotPlaceView = z.object({
  level: z.string().nullable().meta({ description: 'null: the datum of a house without levels.' }),
  between: z.tuple([z.string(), z.string()]).meta({
    description: 'Marks of two opposite corners of the bay, or of the ends of the wall’s bay.',
  }),
  before: z
    .object({
      family: FamilyShape,
      line: z.string(),
      side: z.enum(['lower', 'higher']),
      outside: z.boolean(),
    })
    .nullable()
    .meta({ description: 'A metre before a wall, on which side of its line; null: the middle of the bay.' }),
  eye: PlanPoint,
  footing: z.enum(FOOTINGS).meta({
    description: 'The lowest level, a floor that has closed, or nothing that is on record.',
  }),
  closes: Day.nullable(),
  turns: z.array(z.object({ look: LookShape, shots: z.array(ShotView) })).meta({
    description: 'Which ways to look from there, and what is seen that way; the way to most first.',
  }),
});
export type ShotPlaceView = z.infer<typeof ShotPlaceView>;

export const UnseenShotView = ShotView.extend({ reason: z.enum(['out-of-reach', 'blocked']) });
export type UnseenShotView = z.infer<typeof UnseenShotView>;

/** How a member stands for a covering: what is left of a walk that was ordered earlier is read from here. */
export const AskedLineView = z.object({
  mark: MarkShape,
  state: z.enum(LINE_STATES),
  hidden: StretchShape.nullable().meta({ description: 'null: all of it.' }),
  missing: z.array(StretchShape).meta({ description: 'As in the closing report: empty, where it is all.' }),
  lostBefore: z.array(StretchShape),
});
export type AskedLineView = z.infer<typeof AskedLineView>;

export const ShotListView = z
  .object({
    asOf: Instant,
    today: Day,
    grid: GridShape.nullable(),
    coverings: z
      .array(
        z.object({
          id: Id,
          name: z.string(),
          kind: CoveringFacts.shape.kind,
          plannedDay: Day.nullable(),
          daysLeft: z.int().nullable(),
        }),
      )
      .meta({ description: 'Those for which something is missing, what closes first first.' }),
    places: z.array(ShotPlaceView),
    unseen: z.array(UnseenShotView).meta({ description: 'What can be seen from no place.' }),
    placeless: z.array(ShotView).meta({ description: 'Members of which nobody knows where they lie.' }),
    asked: z
      .array(z.object({ id: Id, name: z.string(), hasClosed: z.boolean(), lines: z.array(AskedLineView) }))
      .meta({ description: 'All coverings, whenever they close, and how each member stands for them.' }),
    lying: z
      .array(
        z.object({
          ...{ id: Id, name: z.string(), since: Instant, mark: MarkShape },
          stretch: StretchShape.nullable().meta({ description: 'null: over all of it.' }),
        }),
      )
      .meta({ description: 'Temporary protection that lies over members today, what was laid first first.' }),
    later: z.int().meta({ description: 'Gaps of coverings that close later, or have no day.' }),
  })
  .meta({ id: 'ShotList' });
export type ShotListView = z.infer<typeof ShotListView>;
