/** What makes a capture time impossible, so that its photo is evidence of nothing. */
export const CAPTURE_DOUBTS = ['before-first-day', 'after-upload'] as const;
export type CaptureDoubt = (typeof CAPTURE_DOUBTS)[number];

/** The doubt among the flags of a capture time, if there is one. */
export function findDoubt(flags: readonly string[]): CaptureDoubt | null {
  return CAPTURE_DOUBTS.find((doubt) => flags.includes(doubt)) ?? null;
}
