import type { Standing } from '#domain/contract/hold';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { CoveringView } from '#domain/contract/views';
import { holdPhase } from '#domain/record/hold-phase';
import { findCovering } from './closing-preview.ts';

/** Whether a release is outrun only the report knows, which may come later than the covering. */
export function standingOf(covering: CoveringView, report: ClosingReportView | undefined): Standing {
  const { without = null, takenBack = null } = covering.closed ?? {};
  const plain: Standing = { phase: holdPhase(covering), beyond: [], without, takenBack };
  return findCovering(report, covering.id)?.standing ?? plain;
}
