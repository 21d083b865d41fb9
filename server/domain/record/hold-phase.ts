/**
 * A covering is a hold point: a point beyond which work may not proceed without release (the term of quality
 * plans, ISO 10005:2018, from memory). A closing ends it whichever of these it stands in.
 */
export const HOLD_STATES = ['planned', 'ready', 'refused', 'released'] as const;
export type HoldState = (typeof HOLD_STATES)[number];

/**
 * Where a covering stands with its inspection: the states of its hold; 'outrun', released for less than would have to
 * be released now; and the ways in which it ends, of which one is a release that was taken back after the closing.
 */
export const HOLD_PHASES = [
  ...HOLD_STATES,
  'outrun',
  'under-release',
  'under-taken-back',
  'without-release',
] as const;
export type HoldPhase = (typeof HOLD_PHASES)[number];

export interface Held {
  readonly hold: { readonly state: HoldState };
  readonly closed: { readonly release: string | null; readonly takenBack: object | null } | null;
}

/** As far as the covering itself tells: whether a release is outrun, only its lines do. */
export function holdPhase({ hold, closed }: Held): HoldPhase {
  if (!closed) return hold.state;
  if (closed.release === null) return 'without-release';
  return closed.takenBack ? 'under-taken-back' : 'under-release';
}
