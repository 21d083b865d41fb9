import { z } from 'zod';
import { AXIS_PROBLEMS } from '../frame/set-out.ts';
import { MarkShape, MemberFacts, Sha256 } from './shapes.ts';

/** Fields of a member that a schedule column can fill. */
export const SCHEDULE_FIELDS = [
  'mark',
  'kind',
  'name',
  'place',
  'track',
  'from',
  'to',
  'level',
  'base',
  'top',
  'width',
  'depth',
  'section',
  'note',
] as const;
export type ScheduleField = (typeof SCHEDULE_FIELDS)[number];

export const ROW_PROBLEMS = [
  'mark-missing',
  'mark-too-long',
  'mark-control-character',
  'mark-repeated',
  'value-too-long',
  'unknown-track',
  'not-a-length',
] as const;

export const SchedulePreviewView = z
  .object({
    columns: z.array(
      z.object({
        index: z.int(),
        header: z.string(),
        field: z.enum(SCHEDULE_FIELDS).nullable().meta({ description: 'null: kept under its own name.' }),
      }),
    ),
    rows: z.int(),
    encoding: z.enum(['utf-8', 'shift_jis', 'utf-16le', 'utf-16be', 'xlsx']),
    sample: z.array(z.array(z.string())).meta({ description: 'The first rows as read.' }),
    problems: z.array(
      z.object({
        line: z.int().meta({ description: 'As a spreadsheet counts: the heading is line 1.' }),
        column: z.string(),
        value: z.string(),
        reason: z.enum(ROW_PROBLEMS),
        firstLine: z.int().nullable().meta({ description: 'For a repeated mark: where it stood first.' }),
      }),
    ),
    added: z.array(MemberFacts),
    changed: z.array(z.object({ before: MemberFacts, after: MemberFacts, returns: z.boolean() })),
    retired: z.array(z.object({ mark: MarkShape, tags: z.int() })),
    unchanged: z.int(),
    outOfFrame: z
      .array(
        z.object({
          line: z.int(),
          mark: MarkShape,
          reason: z.enum(AXIS_PROBLEMS),
          field: z.string(),
          value: z.string(),
        }),
      )
      .meta({
        description:
          'Members that are imported, but whose place in the frame cannot be as it stands in the table, or with what the record has.',
      }),
    doubtfulHeights: z
      .array(
        z.object({
          line: z.int(),
          mark: MarkShape,
          underside: z.number(),
          top: z.number(),
          depth: z.number().nullable().meta({ description: 'Stated depth of the section.' }),
        }),
      )
      .meta({
        description:
          'Level members whose stated underside and top (mm) cannot be the faces of one piece. They are imported, and drawn level midway between the two.',
      }),
    lacksGrid: z
      .boolean()
      .meta({ description: 'Places are stated, but the house has no grid to read them by.' }),
    digest: Sha256.meta({ description: 'Send it as `agree` to import exactly what was shown.' }),
  })
  .meta({ id: 'SchedulePreview' });
export type SchedulePreviewView = z.infer<typeof SchedulePreviewView>;

export const ScheduleImportView = z
  .object({
    added: z.int(),
    changed: z.int(),
    retired: z.int(),
    unchanged: z.int(),
    badRows: z.int(),
    seq: z.int().nullable(),
  })
  .meta({ id: 'ScheduleImport' });
export type ScheduleImportView = z.infer<typeof ScheduleImportView>;
