import type { UsualLie } from '../frame/set-out.ts';
import { kindIn, type Lexicon } from './make-lexicon.ts';

/** A kind that nobody knows may run in any way. */
const UNKNOWN: UsualLie = { lies: 'none', section: null };

/** How a kind usually runs and how thick it usually is. */
export function usualLie(kind: string, lexicon: Lexicon): UsualLie {
  return kindIn(lexicon, kind) ?? UNKNOWN;
}
