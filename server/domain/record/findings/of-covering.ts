import { groupBy } from '../../group-by.ts';
import type { TakenBackView } from '../../contract/hold.ts';
import type { CoveringKind } from '../../contract/shapes.ts';
import { finding, type Finding, type SeenTag } from './finding.ts';

export interface CoveringEvidence {
  readonly covering: string;
  readonly name: string;
  readonly kind: CoveringKind;
  /** Epoch milliseconds; null while it is open. */
  readonly closedMs: number | null;
  /** Whether it closed under a release. */
  readonly released: boolean;
  /** Why it closed without one; null where nobody said. */
  readonly without: string | null;
  /** Of the release that it closed under, once somebody has taken it back. */
  readonly takenBack: TakenBackView | null;
  /** Marks without a record, now lost; not those that the release accepts. */
  readonly lost: readonly string[];
  /** Tags of what it hides whose photos' dates stand. */
  readonly sightings: readonly (SeenTag & {
    readonly takenMs: number;
    readonly uncertaintyMs: number;
    /** From when no face of the member is open there; null while one is. */
    readonly hiddenMs: number | null;
  })[];
}

/**
 * What a covering that has closed leaves to be looked at: members that were hidden without a record, a release that
 * was missing or is taken back, and members that are seen again afterwards, by a photo taken later even at the edge of its uncertainty. What
 * is seen after plastering at the stage 'plastered' is the plaster, and what is seen while the other face of a
 * wall is open is seen from there.
 */
export function findingsOfCovering(evidence: CoveringEvidence): Finding[] {
  const { covering, name, kind, closedMs, released, without, takenBack, lost, sightings } = evidence;
  if (closedMs === null) return [];
  const found: Finding[] = [];
  if (lost.length > 0)
    found.push(
      finding('closed-with-gaps', [covering], { covering, marks: lost, facts: { name, count: lost.length } }),
    );
  if (!released)
    found.push(
      finding('closed-without-release', [covering], { covering, facts: { name, why: without ?? '' } }),
    );
  if (takenBack)
    found.push(
      finding('release-taken-back', [covering], {
        covering,
        facts: { name, ...takenBack, by: takenBack.by?.name ?? '' },
      }),
    );
  const after = sightings.filter(
    ({ stage, takenMs, uncertaintyMs, hiddenMs }) =>
      hiddenMs !== null &&
      takenMs - uncertaintyMs > Math.max(closedMs, hiddenMs) &&
      !(kind === 'plaster' && stage === 'plastered'),
  );
  for (const [mark, tags] of groupBy(after, (seen) => seen.mark))
    found.push(
      finding('shown-after-closing', [covering, mark], {
        covering,
        tags,
        facts: { name, closed: new Date(closedMs).toISOString() },
      }),
    );
  return found;
}
