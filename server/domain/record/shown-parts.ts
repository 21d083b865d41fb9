import { clearOf, type Sheeted } from './protection.ts';
import type { Stretch } from './stretches.ts';

/** A member without a hidden stretch is measured as one piece. */
export const WHOLE: Stretch = { from: 0, to: 1000 };

/** The parts of what is hidden that a tag shows bare: its stretch without what lay over that. */
export function shownParts(
  { stretch, sheeted = [] }: { readonly stretch?: Stretch | null; readonly sheeted?: readonly Sheeted[] },
  hidden: Stretch | null,
): Stretch[] {
  const shown = (hidden && stretch) ?? hidden ?? WHOLE;
  if (sheeted.length === 0) return [shown];
  return clearOf(hidden ? common(shown, hidden) : shown, sheeted);
}

const common = (a: Stretch, b: Stretch): Stretch => ({
  from: Math.max(a.from, b.from),
  to: Math.min(a.to, b.to),
});
