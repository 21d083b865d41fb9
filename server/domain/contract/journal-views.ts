import { z } from 'zod';
import { HOLD_PHASES } from '../record/hold-phase.ts';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { Day, Id, MarkShape, StageShape } from './shapes.ts';
import { SmallPhotoView } from './small-photo.ts';
import { NoteView } from './views.ts';
import { ReportCoveringView, ReportLineView } from './report-views.ts';

/** What the journal of a house answers. Nothing here grows with the house. */

export const MissingLineView = ReportLineView.omit({ records: true });
export type MissingLineView = z.infer<typeof MissingLineView>;

const NextCovering = ReportCoveringView.omit({ lines: true, closedAt: true, layers: true });

const Named = z.object({ coverings: z.array(NextCovering), more: z.int() });

export const NextClosingsView = z.object({
  gaps: z
    .array(
      NextCovering.extend({
        missing: z.array(MissingLineView),
        more: z.int().meta({ description: 'Gaps beyond those listed.' }),
      }),
    )
    .meta({ description: 'Open coverings with gaps, what closes first first, the first few of them.' }),
  later: Named.meta({ description: 'Open coverings with gaps that close later, without their members.' }),
  complete: Named,
  hidesNothing: Named,
});
export type NextClosingsView = z.infer<typeof NextClosingsView>;

/** What is said of inspections, in the order in which it happens. */
export const INSPECTED = ['ready', 'refused', 'released', 'takenBack', 'doubted', 'answered'] as const;

export const BriefDayView = z
  .object({
    day: Day,
    photos: z.int().meta({ description: 'Without those whose date cannot be.' }),
    pictures: z.array(SmallPhotoView).meta({ description: 'The first of them, in order of capture.' }),
    shown: z
      .array(
        z.object({
          stage: StageShape,
          members: z.int(),
          marks: z.array(MarkShape).meta({ description: 'The first of them.' }),
        }),
      )
      .meta({ description: 'What the photos of the day show by the tags that stand, in order of work.' }),
    tags: z.int().meta({ description: 'Tags said on this day that stand, on photos of whatever day.' }),
    tagsElsewhere: z.int().meta({ description: 'Those of them on photos of another day.' }),
    statements: z.int(),
    members: z.int().meta({ description: 'Members added or changed by schedules imported on this day.' }),
    notes: z.array(NoteView.extend({ cut: z.boolean() })),
    closed: z.array(
      z.object({
        ...{ id: Id, name: z.string() },
        phase: z.enum(HOLD_PHASES).meta({ description: 'How it closed: under a release, or without.' }),
      }),
    ),
    inspected: z
      .array(
        z.object({
          what: z.enum(INSPECTED),
          names: z.array(z.string()).meta({ description: 'The first coverings, or of doubts members.' }),
          count: z.int(),
        }),
      )
      .meta({
        description: 'What was said of inspections on this day, in the order in which each was first said.',
      }),
    addedBy: z.array(z.string()).meta({ description: 'Who added the photos of the day, whenever that was.' }),
    taggedBy: z
      .array(z.string())
      .meta({ description: 'Who said what the photos of the day show, and the tags said on the day.' }),
  })
  .meta({ id: 'BriefDay' });
export type BriefDayView = z.infer<typeof BriefDayView>;

export const EarlierDaysView = z
  .object({
    days: z.array(BriefDayView),
    next: Day.nullable().meta({ description: 'Send it as `before` for the days before these.' }),
  })
  .meta({ id: 'EarlierDays' });
export type EarlierDaysView = z.infer<typeof EarlierDaysView>;

export const JournalView = z
  .object({
    today: BriefDayView,
    next: NextClosingsView,
    openCoverings: z.int(),
    holds: z
      .array(z.object({ id: Id, name: z.string(), state: z.enum(['ready', 'refused', 'outrun']) }))
      .meta({
        description:
          'Open coverings that wait for somebody: for inspection, for what was missing at one, or for one anew.',
      }),
    lastDay: BriefDayView.nullable().meta({ description: 'The last day before today with anything on it.' }),
    earlier: EarlierDaysView,
    ahead: z.array(z.object({ day: Day, notes: z.array(NoteView.extend({ cut: z.boolean() })) })).meta({
      description: 'Notes of days to come, the nearest first.',
    }),
    waiting: z.object({
      untagged: z.int(),
      undated: z.int(),
      findings: z.int().meta({ description: 'Findings that nobody has answered.' }),
      impossible: z.object({
        photos: z.int(),
        days: z.array(
          z.object({
            day: Day,
            doubt: z.enum(CAPTURE_DOUBTS),
            photos: z.int(),
            pictures: z.array(SmallPhotoView),
          }),
        ),
      }),
    }),
  })
  .meta({ id: 'Journal' });
export type JournalView = z.infer<typeof JournalView>;
