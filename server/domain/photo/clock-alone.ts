import type { Capture } from '../contract/capture.ts';

/**
 * Whether nothing but the camera's own clock speaks for a time, so that its uncertainty is that of a
 * clock which somebody keeps right. No satellite time bounds it, no clock mark, and no person.
 */
export function restsOnClockAlone(capture: Extract<Capture, { state: 'dated' }>): boolean {
  const { source, correction, byHand } = capture;
  if (correction !== null || byHand !== null) return false;
  return source === 'house-zone' || (source === 'own-offset' && !isBoundBySatellite(capture));
}

/**
 * Of a clock with its own zone: a satellite time that confirms it has made the uncertainty just reach it.
 * One that says exactly the same is not among the rejected, and leaves the least uncertainty there is.
 */
function isBoundBySatellite({
  instant,
  uncertaintyS,
  rejected,
}: Extract<Capture, { state: 'dated' }>): boolean {
  const reaches = (other: string) => Math.abs(Date.parse(other) - Date.parse(instant)) <= uncertaintyS * 1000;
  return uncertaintyS <= 1 || rejected.some((other) => other.source === 'gps-only' && reaches(other.instant));
}
