import { z } from 'zod';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { ClockCorrectionShape } from './clock.ts';
import { Day, Instant, PersonShape } from './shapes.ts';

export const CAPTURE_SOURCES = [
  'own-offset',
  'house-zone-and-gps',
  'gps-offset',
  'house-zone',
  'gps-only',
  // A named person said when.
  'by-hand',
] as const;
export type CaptureSource = (typeof CAPTURE_SOURCES)[number];

export const CAPTURE_FLAGS = [
  'camera-not-in-house-zone',
  'ambiguous-hour',
  'skipped-hour',
  // Another zone would fit the GPS time, or the GPS time lies after the picture.
  'gps-disagrees',
  // No zone fits the GPS time, which lies before the picture: an old fix.
  'gps-stale',
  // The GPS time repeats the camera's local time instead of UTC.
  'gps-not-utc',
  // A GPS time was written but without a usable date, so it could not help.
  'gps-unusable',
  // A thermal camera wrote its zone where it is not read, so the house's is no more than a guess.
  'zone-not-read',
  'implausible-year',
  // Clock marks of this camera moved or confirmed what its clock said.
  'clock-corrected',
  // Somebody set the clock between the two marks around this photo, nobody knows when.
  'clock-set-between-marks',
  'dated-by-hand',
  ...CAPTURE_DOUBTS,
] as const;
export type CaptureFlag = (typeof CAPTURE_FLAGS)[number];

export const REJECTION_REASONS = [
  'a-better-source-exists',
  'disagrees-with-gps',
  'no-such-offset',
  'gps-not-utc',
  'house-zone-preferred',
  'other-reading-of-the-hour',
  'implausible-year',
  'dated-by-hand',
] as const;
export type RejectionReason = (typeof REJECTION_REASONS)[number];

export const RejectedCandidate = z.object({
  source: z.enum(CAPTURE_SOURCES),
  instant: Instant,
  offsetMinutes: z.number().int(),
  why: z.enum(REJECTION_REASONS),
});

export type RejectedCandidate = z.infer<typeof RejectedCandidate>;

/** When the picture was taken, with how that is known and what was not believed. Design: provenance, never a bare value. */
export const CaptureShape = z.discriminatedUnion('state', [
  z.object({
    state: z.literal('dated'),
    instant: Instant,
    offsetMinutes: z.number().int(),
    day: Day.meta({ description: "The day in the house's zone." }),
    source: z.enum(CAPTURE_SOURCES),
    uncertaintyS: z.number().min(0),
    flags: z.array(z.enum(CAPTURE_FLAGS)),
    rejected: z.array(RejectedCandidate),
    correction: ClockCorrectionShape.extend({
      uncorrected: Instant.meta({ description: 'What the camera’s own clock said.' }),
    })
      .nullable()
      .meta({ description: 'What clock marks of the camera did to the reading; null without any.' }),
    byHand: z.object({ by: PersonShape.nullable(), at: Instant, reason: z.string() }).nullable(),
  }),
  z.object({ state: z.literal('undated'), rejected: z.array(RejectedCandidate) }),
]);
export type Capture = z.infer<typeof CaptureShape>;
