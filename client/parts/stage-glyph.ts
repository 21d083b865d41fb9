import { STAGES, TRACKS, stageRank, type Stage, type Track } from '#domain/frame/stage';

/** The five strokes of 正 in the order of writing, on a 24 × 24 field: one a stage. */
export const STROKES = ['M4 4.5H20', 'M12 4.5V20', 'M12 12H18.5', 'M7 11V20', 'M3 20H21'] as const;

export type StrokeState = 'passed' | 'ahead' | 'outside';

/**
 * How each of the five strokes is drawn: inked up to the stage reached, pale where the track still has
 * stages ahead, left out otherwise. So a finished rafter reads 下, and a finished rail 正.
 */
export function strokeStates(stage: Stage | null, track: Track | null): StrokeState[] {
  const reached = stage === null ? -1 : stageRank(stage);
  const stages: readonly Stage[] = track === null ? STAGES : TRACKS[track];
  const last = Math.max(...stages.map(stageRank));
  return STAGES.map((_, rank) => {
    if (rank <= reached) return 'passed';
    return rank <= last ? 'ahead' : 'outside';
  });
}
