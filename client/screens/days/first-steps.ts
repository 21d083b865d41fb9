import { mayAct, type Act } from '#domain/contract/acts';
import type { HouseView } from '#domain/contract/views';

/** What a fresh house needs, in the order in which one thing builds on the other. */
export interface FirstStep {
  readonly word: 'firstDay' | 'schedule' | 'photos' | 'covering';
  /** Below the address of the house. */
  readonly path: string;
  readonly act: Act;
  readonly isDone: boolean;
}

/** None once the record runs, and of each only what one's role allows. */
export function firstSteps({ counts, role, firstDay }: HouseView): FirstStep[] {
  if (counts.members > 0 && counts.photos > 0 && counts.coverings > 0) return [];
  const steps: FirstStep[] = [
    { word: 'schedule', path: 'schedule', act: 'record', isDone: counts.members > 0 },
    { word: 'photos', path: 'photos', act: 'contribute', isDone: counts.photos > 0 },
    { word: 'covering', path: 'coverings/new', act: 'record', isDone: counts.coverings > 0 },
    { word: 'firstDay', path: 'settings', act: 'rule', isDone: firstDay !== null },
  ];
  return steps.filter(({ act }) => mayAct(role, act));
}
