import type { Site } from '#domain/contract/shapes';
import type { Story } from './act.ts';
import { doubts } from './doubts.ts';
import { evenings } from './evenings.ts';
import { planOf } from './house-plan.ts';
import { idsOf } from './ids.ts';
import { inspections } from './inspections.ts';
import { openRecord } from './opening.ts';
import type { StoryPhoto } from './photo.ts';
import { sheets } from './sheets.ts';

/** All that was done in the record of the boathouse, in order; the same for the same raising and photos. */
export function storyOf(raising: string, site: Site, photos: readonly StoryPhoto[]): Story {
  const [plan, ids] = [planOf(raising), idsOf(raising)];
  const told = evenings(plan, raising, photos, ids);
  const acts = [
    ...openRecord(plan, raising, site, ids),
    ...told,
    ...doubts(raising, told),
    ...inspections(raising, ids),
    ...sheets(raising, ids),
  ];
  // A sort keeps what is said in one minute in its order.
  return { house: ids.house, acts: acts.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at)) };
}
