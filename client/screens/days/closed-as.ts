import type { HoldPhase } from '#domain/record/hold-phase';

export const CLOSED_AS = ['under', 'takenBack', 'without'] as const;

/** How a covering that has closed did so, in the words of the journal. */
export function closedAs(phase: HoldPhase): (typeof CLOSED_AS)[number] {
  if (phase === 'under-release') return 'under';
  return phase === 'under-taken-back' ? 'takenBack' : 'without';
}
