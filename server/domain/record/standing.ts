import type { Standing } from '../contract/hold.ts';
import type { Mark } from '../frame/mark.ts';
import { holdPhase, type Held } from './hold-phase.ts';
import { outrunBy, type HiddenNow } from './release.ts';
import type { ReportLine } from './report-line.ts';

export interface HeldCovering {
  readonly hold: Held['hold'];
  readonly closed: (NonNullable<Held['closed']> & Pick<Standing, 'without' | 'takenBack'>) | null;
  /** What the release that stands speaks of; null where none does. */
  readonly released: readonly HiddenNow[] | null;
}

const PLANNED: HeldCovering = { hold: { state: 'planned' }, closed: null, released: null };

/** Where a covering stands with its inspection, by its lines as they are now. */
export function standingOf(
  { hold, closed, released }: HeldCovering = PLANNED,
  lines: readonly ReportLine[],
): Standing {
  const phase = holdPhase({ hold, closed });
  const beyond = phase === 'released' ? outrunBy(released ?? [], lines) : [];
  return {
    phase: beyond.length > 0 ? 'outrun' : phase,
    beyond: beyond as Mark[],
    without: closed?.without ?? null,
    takenBack: closed?.takenBack ?? null,
  };
}
