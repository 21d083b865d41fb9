import type { HouseView } from '#domain/contract/views';

/** What a fresh house needs, in the order in which one thing builds on the other. */
export interface FirstStep {
  readonly word: 'firstDay' | 'schedule' | 'photos' | 'covering';
  /** Below the address of the house. */
  readonly path: string;
  readonly isDone: boolean;
}

/** None once the record runs. The first day on site is asked only of those who may set it. */
export function firstSteps({ counts, role, firstDay }: HouseView): FirstStep[] {
  if (counts.members > 0 && counts.photos > 0 && counts.coverings > 0) return [];
  const steps: FirstStep[] = [
    { word: 'schedule', path: 'schedule', isDone: counts.members > 0 },
    { word: 'photos', path: 'photos', isDone: counts.photos > 0 },
    { word: 'covering', path: 'coverings/new', isDone: counts.coverings > 0 },
  ];
  if (role !== 'owner') return steps;
  return [...steps, { word: 'firstDay', path: 'settings', isDone: firstDay !== null }];
}
