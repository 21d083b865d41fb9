import type { Verdict } from '#domain/photo/legibility';

const CIRCLE = 'M6 1.2a4.8 4.8 0 1 0 0 9.6a4.8 4.8 0 1 0 0-9.6z';

/** In a square of 12. */
export const VERDICT_PATHS: Readonly<Record<Verdict, { line: string; fill: string }>> = {
  clear: { line: CIRCLE, fill: CIRCLE },
  weak: { line: CIRCLE, fill: 'M6 1.2a4.8 4.8 0 0 0 0 9.6z' },
  unreadable: { line: `${CIRCLE}M2.6 2.6l6.8 6.8M9.4 2.6l-6.8 6.8`, fill: '' },
};
