/** What was measured of a region of the original, for the question whether a stranger could read the member there. */
export interface LegibilityMeasures {
  /** Pixels of the upright original across the narrow side. */
  readonly acrossPx: number;
  /** Blur of what stands out (Gaussian deviation) as a share of the narrow side; 1: nothing stands out. */
  readonly fineBlur: number;
  /** The same seen with 24 px across instead of 64: noise is averaged away, and only a strong blur shows. */
  readonly coarseBlur: number;
  /** Median of the grey values, 0 to 255. */
  readonly middle: number;
  /** Shares of clipped pixels: Y ≤ 5, Y ≥ 250. */
  readonly shadows: number;
  readonly highlights: number;
}

export const VERDICTS = ['clear', 'weak', 'unreadable'] as const;
export type Verdict = (typeof VERDICTS)[number];
export const READING_REASONS = ['too-small', 'blurred', 'too-dark', 'too-bright'] as const;
export type ReadingReason = (typeof READING_REASONS)[number];
/** 'not-measured': the original cannot be decoded, so nothing is said either way. */
export const LEGIBILITY_REASONS = [...READING_REASONS, 'not-measured'] as const;
export type LegibilityReason = (typeof LEGIBILITY_REASONS)[number];

/** Raise it when measures or thresholds change, so that all tags are measured anew. */
export const LEGIBILITY_VERSION = 1;

/**
 * From where on a region is weak, and from where on it is unreadable. 'Clear' means that bars of 1/16 of the
 * member (an ink line, a gap beside a wedge) keep half of their contrast: blur 0.0234. 'Unreadable' means that
 * bars of 1/8 of it (the head of a peg) keep less than a tenth: blur 0.0854. A Gaussian of deviation s leaves
 * exp(-2 π² s² / p²) of a period p. The first limit is set lower, since fine meshes look sharper than they are. Grounds and trials on real photos: tests/calibration/README.md.
 */
export const LIMITS = {
  acrossPx: { weak: 28, unreadable: 12 },
  fineBlur: { weak: 0.02 },
  coarseBlur: { unreadable: 0.085 },
  middle: { weak: 30, unreadable: 8 },
  clipped: { weak: 0.5, unreadable: 0.8 },
} as const;

/** The narrow side as it is looked at, in px: what is larger is shrunk to it, what is smaller stays. */
export const SEEN_ACROSS = { fine: 64, coarse: 24 } as const;

/** What the filters themselves blur, in px as seen; found with the limits. */
export const FILTER_PX = 0.9;

export interface Reading {
  readonly verdict: Verdict;
  /** The worst first. */
  readonly reasons: ReadingReason[];
}

/** Whether a stranger could read the member, and what stands against it. */
export function readability(measures: LegibilityMeasures): Reading {
  const grades = READING_REASONS.map((reason) => ({ reason, grade: GRADES[reason](measures) }));
  const against = grades.filter(({ grade }) => grade > 0).sort((a, b) => b.grade - a.grade);
  return { verdict: VERDICTS[against[0]?.grade ?? 0], reasons: against.map(({ reason }) => reason) };
}

/** What can be said of a region by its size alone, before anything is measured. */
export function sizeVerdict(acrossPx: number): Verdict {
  return VERDICTS[below(acrossPx, LIMITS.acrossPx)];
}

/** How many of the finest details fit across the member. 0 where nothing stands out. */
export function sharpnessOf({ acrossPx, fineBlur, coarseBlur }: LegibilityMeasures): number {
  if (fineBlur >= 1 && coarseBlur >= 1) return 0;
  const seen = Math.max(1, Math.min(acrossPx, SEEN_ACROSS.fine));
  return Math.round(1 / Math.hypot(Math.min(fineBlur, coarseBlur), FILTER_PX / seen));
}

/** 0 clear, 1 weak, 2 unreadable. */
type Grade = 0 | 1 | 2;

const GRADES: Readonly<Record<ReadingReason, (measures: LegibilityMeasures) => Grade>> = {
  'too-small': ({ acrossPx }) => below(acrossPx, LIMITS.acrossPx),
  blurred: ({ fineBlur, coarseBlur }) =>
    coarseBlur >= LIMITS.coarseBlur.unreadable ? 2 : fineBlur >= LIMITS.fineBlur.weak ? 1 : 0,
  'too-dark': ({ middle, shadows }) => worse(below(middle, LIMITS.middle), above(shadows, LIMITS.clipped)),
  'too-bright': ({ highlights }) => above(highlights, LIMITS.clipped),
};

interface Limit {
  readonly weak: number;
  readonly unreadable: number;
}

const below = (value: number, { weak, unreadable }: Limit): Grade =>
  value < unreadable ? 2 : value < weak ? 1 : 0;
const above = (value: number, { weak, unreadable }: Limit): Grade =>
  value >= unreadable ? 2 : value >= weak ? 1 : 0;
const worse = (a: Grade, b: Grade): Grade => (a > b ? a : b);
