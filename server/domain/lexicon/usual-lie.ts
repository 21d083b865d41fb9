import type { UsualLie } from '../frame/set-out.ts';
import { findKind } from './track-of-kind.ts';

/** A kind that nobody knows may run in any way. */
const UNKNOWN: UsualLie = { lies: 'none', section: null };

/** How a kind usually runs and how thick it usually is. */
export function usualLie(kind: string): UsualLie {
  return findKind(kind) ?? UNKNOWN;
}
