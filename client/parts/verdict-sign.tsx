import type { Verdict } from '#domain/photo/legibility';
import { VERDICT_PATHS } from './verdict-paths.ts';

/** A full, a half, a crossed circle: told apart without colour. The words stand beside it. */
export function VerdictSign({ verdict }: { verdict: Verdict }) {
  const { fill, line } = VERDICT_PATHS[verdict];
  return (
    <svg className="verdict-sign" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
      <path d={line} fill="none" stroke="currentColor" strokeWidth="1.4" />
      {fill === '' ? null : <path d={fill} fill="currentColor" />}
    </svg>
  );
}
