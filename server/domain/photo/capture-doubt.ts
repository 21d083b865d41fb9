import type { Capture } from '../contract/capture.ts';
import { spanOfDay } from '../record/zoned-day.ts';
import { MINUTES } from './capture-candidates.ts';
import { findDoubt, type CaptureDoubt } from './capture-doubts.ts';

export interface DoubtBounds {
  /** IANA zone of the house. */
  readonly zone: string;
  /** The house's first day, YYYY-MM-DD in its zone; null where none is declared. */
  readonly firstDay: string | null;
  /** When the server took the photo in, by its own clock. */
  readonly addedAt: string;
}

/**
 * Flags a capture time that cannot be true: before the house's first day, or later than the photo was
 * added (design 3.1, 3.5). Only what lies outside its own uncertainty is flagged, and clocks of phone
 * and server may differ by as much as a confirming GPS time may. One flag at most: the later than added
 * is certain, while a first day may have been declared wrongly.
 */
export function doubtCapture(capture: Capture, bounds: DoubtBounds): Capture {
  if (capture.state === 'undated') return capture;
  const doubt = doubtAbout(Date.parse(capture.instant), capture.uncertaintyS * 1000, bounds);
  return doubt ? { ...capture, flags: [...capture.flags, doubt] } : capture;
}

/** What speaks against the capture time as a whole: such a photo is evidence of nothing. */
export function doubtOf(capture: Capture): CaptureDoubt | null {
  return capture.state === 'dated' ? findDoubt(capture.flags) : null;
}

function doubtAbout(
  takenMs: number,
  uncertaintyMs: number,
  { zone, firstDay, addedAt }: DoubtBounds,
): CaptureDoubt | null {
  const leeway = Math.max(uncertaintyMs, MINUTES.confirm * 60_000);
  if (takenMs - leeway > Date.parse(addedAt)) return 'after-upload';
  if (firstDay !== null && takenMs + uncertaintyMs < spanOfDay(firstDay, zone).from)
    return 'before-first-day';
  return null;
}
