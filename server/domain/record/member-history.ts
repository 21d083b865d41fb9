import type { MemberHistoryView } from '../contract/views.ts';
import { stageRank, TRACKS, type Stage, type Track } from '../frame/stage.ts';
import { compareText } from '../frame/mark-order.ts';
import { isCertainlyEarlier, type Timed } from './certain-order.ts';

export type StageInterval = MemberHistoryView['stages'][number];

/** A standing tag of the member with the instant of its photo, null where undated or contradicted. */
export interface StageSighting {
  readonly tag: string;
  readonly photo: string;
  readonly stage: Stage;
  readonly instant: string | null;
  readonly uncertaintyS: number;
  /** See `clockOf`. */
  readonly clock: string | null;
}

type Dated = StageSighting & { readonly instant: string };

/**
 * For each stage of the track the interval in which it was reached (design 3.6): after the latest
 * photo that shows the member before the stage, by the earliest that shows it there or past it.
 * Sightings without an instant bound nothing, nor does a photo of an earlier stage taken after `by`; where it
 * was certainly after, it contradicts it. Of sightings at one instant the lowest tag
 * id speaks. Sightings outside the track count by their rank.
 */
export function stageIntervals(track: Track, sightings: readonly StageSighting[]): StageInterval[] {
  const dated = sightings
    .filter((sighting): sighting is Dated => sighting.instant !== null)
    .sort((a, b) => compareText(a.instant, b.instant) || compareText(a.tag, b.tag));
  return TRACKS[track].map((stage) => stageInterval(stage, dated));
}

function stageInterval(stage: Stage, dated: readonly Dated[]): StageInterval {
  const by = dated.find((sighting) => stageRank(sighting.stage) >= stageRank(stage));
  const earlier = dated.filter((sighting) => stageRank(sighting.stage) < stageRank(stage));
  const before = by ? earlier.filter((sighting) => sighting.instant < by.instant) : earlier;
  const last = before.at(-1);
  const after = last && before.find((sighting) => sighting.instant === last.instant);
  return {
    stage,
    after: bound(after),
    by: bound(by),
    contradicted:
      by !== undefined && earlier.some((sighting) => isCertainlyEarlier(timed(by), timed(sighting))),
  };
}

function timed({ instant, uncertaintyS, clock }: Dated): Timed {
  return { takenMs: Date.parse(instant), uncertaintyMs: uncertaintyS * 1000, clock };
}

function bound(sighting: Dated | undefined): StageInterval['by'] {
  if (!sighting) return null;
  const { instant, tag, photo, stage } = sighting;
  return { instant, tag, photo, stage };
}
