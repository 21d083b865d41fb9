import { z } from 'zod';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { Day, Instant } from './shapes.ts';

export const CAPTURE_SOURCES = [
  'own-offset',
  'house-zone-and-gps',
  'gps-offset',
  'house-zone',
  'gps-only',
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
  'implausible-year',
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
  }),
  z.object({ state: z.literal('undated'), rejected: z.array(RejectedCandidate) }),
]);
export type Capture = z.infer<typeof CaptureShape>;
