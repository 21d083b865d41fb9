/**
 * A covering is a hold point: a point beyond which work may not proceed without release (the term of quality
 * plans, ISO 10005:2018, from memory). A closing ends it whichever of these it stands in.
 */
export const HOLD_STATES = ['planned', 'ready', 'refused', 'released'] as const;
export type HoldState = (typeof HOLD_STATES)[number];

/** Where a covering stands with its inspection: the states of its hold, and the two ways in which it ends. */
export const HOLD_PHASES = [...HOLD_STATES, 'under-release', 'without-release'] as const;
export type HoldPhase = (typeof HOLD_PHASES)[number];

interface Held {
  readonly hold: { readonly state: HoldState };
  readonly closed: { readonly release: string | null } | null;
}

export function holdPhase({ hold, closed }: Held): HoldPhase {
  if (!closed) return hold.state;
  return closed.release === null ? 'without-release' : 'under-release';
}
