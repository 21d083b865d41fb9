import type { Capture } from '../contract/capture.ts';

/** When something was seen, and how far that may be wrong. */
export interface Timed {
  /** Epoch milliseconds. */
  readonly takenMs: number;
  readonly uncertaintyMs: number;
  /** The clock that was read, and the rule by which; equal: what one shows first came first. */
  readonly clock: string | null;
}

/** Exif tells whole seconds, and most cameras nothing finer. */
export const ONE_CLOCK_UNCERTAINTY_MS = 500;

/** Whether `a` was before `b` however wrong both times are, or both were read off one clock, a second apart. */
export function isCertainlyEarlier(a: Timed, b: Timed): boolean {
  if (a.takenMs + a.uncertaintyMs < b.takenMs - b.uncertaintyMs) return true;
  return a.clock !== null && a.clock === b.clock && b.takenMs - a.takenMs > 2 * ONE_CLOCK_UNCERTAINTY_MS;
}

/** Hours that come twice or never, and a clock that was set meanwhile, put a clock's own order in doubt. */
const OUT_OF_ORDER = ['ambiguous-hour', 'skipped-hour', 'clock-set-between-marks'] as const;

/**
 * Names the clock that a photo's time was read off; null where its order among others is not sure. Photos
 * that other marks put right are another clock, since somebody may have set it between them.
 */
export function clockOf(camera: string | null, capture: Capture): string | null {
  if (camera === null || capture.state === 'undated') return null;
  const { source, flags, correction } = capture;
  if (source === 'by-hand' || source === 'gps-only' || OUT_OF_ORDER.some((flag) => flags.includes(flag)))
    return null;
  return [camera, source, ...(correction?.marks ?? [])].join(' ');
}
