import type { JournalView } from '#domain/contract/journal-views';

/** What somebody looks at who sees the record of a house for the first time. */
export interface TourStep {
  readonly word: 'report' | 'photo' | 'frame' | 'review';
  /** Below the address of the house. */
  readonly path: string;
}

/** Three of them; none while the house has nothing to be looked at. */
export function tourSteps(
  { openCoverings, today, lastDay, earlier, holds }: JournalView,
  isInspector: boolean,
): readonly TourStep[] {
  const pictures = [today, ...(lastDay ? [lastDay] : []), ...earlier.days].flatMap((day) => day.pictures);
  const photo = pictures.find(({ tags }) => tags > 0) ?? pictures[0];
  if (!photo || openCoverings === 0) return [];
  const waiting = isInspector ? holds.find(({ state }) => state === 'ready') : undefined;
  return [
    { word: 'report', path: 'report' },
    { word: 'photo', path: `photos/${photo.id}` },
    waiting ? { word: 'review', path: `coverings/${waiting.id}/review` } : { word: 'frame', path: 'frame' },
  ];
}
