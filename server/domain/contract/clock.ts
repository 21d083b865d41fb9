import { z } from 'zod';
import { Id, Instant, PersonShape, ReadingsShape, line, paragraph } from './shapes.ts';

/** What is said of a camera's clock, and of when a photo was taken. */

/** A camera as its files name it. Where they write no serial number, all of one make and model are one. */
export const CameraShape = ReadingsShape.pick({ make: true, model: true, serial: true });
export type Camera = z.infer<typeof CameraShape>;

/** What the clock in a camera showed, raw: a wall time, and its offset where the file has one. */
export const ShownShape = z.strictObject({
  wallTime: ReadingsShape.shape.wallTime.unwrap(),
  offsetMinutes: ReadingsShape.shape.offsetMinutes,
});

const within = (maxS: number) =>
  z.int().min(1).max(maxS).meta({ description: 'Seconds by which the time may be wrong, either way.' });

export const ClockMarkFacts = z.strictObject({
  trueTime: Instant.meta({ description: 'What the time truly was when the photo was taken.' }),
  withinS: within(86_400).default(60),
  note: paragraph(1000).default(''),
});
export type ClockMarkFacts = z.infer<typeof ClockMarkFacts>;

export const DatingFacts = z.strictObject({
  taken: Instant.meta({ description: 'The middle of the time in which the photo was taken.' }),
  withinS: within(366 * 86_400),
  reason: line(1000),
});
export type DatingFacts = z.infer<typeof DatingFacts>;

/** On which marks a correction rests; outside the marks the nearest one speaks alone. */
export const CORRECTION_BASES = [
  'one-mark',
  'before-first-mark',
  'between-marks',
  'after-last-mark',
] as const;

export const ClockCorrectionShape = z.object({
  seconds: z.number().meta({ description: 'True time minus what the clock showed.' }),
  uncertaintyS: z.number().min(0),
  basis: z.enum(CORRECTION_BASES),
  marks: z.array(Id).min(1),
});

/** How a capture time came to be known; null of an undated photo. */
export const DATED_BY = ['file', 'clock-mark', 'by-hand'] as const;
export type DatedBy = (typeof DATED_BY)[number];

export const ClockMarkView = ClockMarkFacts.extend({
  id: Id,
  photo: Id,
  shown: ShownShape,
  seconds: z.number().meta({ description: 'True time minus what the clock showed.' }),
  by: PersonShape.nullable(),
  at: Instant,
}).meta({ id: 'ClockMark' });
export type ClockMarkView = z.infer<typeof ClockMarkView>;

export const CameraView = CameraShape.extend({
  photos: z.int(),
  firstDay: z.iso.date().nullable(),
  lastDay: z.iso.date().nullable(),
  corrected: z.int().meta({ description: 'Photos whose time its clock marks have put right or confirmed.' }),
  marks: z.array(ClockMarkView).meta({ description: 'Those that stand, in order of what the clock showed.' }),
  now: ClockCorrectionShape.nullable().meta({
    description: 'What a photo taken now would be corrected by.',
  }),
  setBetween: z.array(z.object({ from: Id, to: Id })).meta({
    description: 'Neighbouring marks that differ by more than a clock drifts: it was set between them.',
  }),
}).meta({ id: 'Camera' });
export type CameraView = z.infer<typeof CameraView>;
