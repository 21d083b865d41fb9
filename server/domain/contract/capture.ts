import { z } from 'zod';
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
  'gps-disagrees',
  'gps-stale',
  'implausible-year',
] as const;
export type CaptureFlag = (typeof CAPTURE_FLAGS)[number];

export const REJECTION_REASONS = [
  'a-better-source-exists',
  'disagrees-with-gps',
  'no-such-offset',
  'implausible-year',
] as const;

export const RejectedCandidate = z.object({
  source: z.enum(CAPTURE_SOURCES),
  instant: Instant,
  offsetMinutes: z.number().int(),
  why: z.enum(REJECTION_REASONS),
});

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
