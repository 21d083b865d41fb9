import { gridReader } from '#domain/frame/grid-reader';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { findKind, trackOf } from '#domain/lexicon/track-of-kind';
import { hiddenByZones } from '#domain/record/zone-hides';
import type { HousePlan } from './house-plan.ts';

/** Of each member the day after this one on which a covering hides it first; null where none does. */
export function dueDays(
  { axes, members, grid, coverings }: HousePlan,
  after: string,
): (mark: string) => string | null {
  const lexicon = lexiconOf([]);
  const inSpace = members.flatMap(({ mark, kind }) => {
    const axis = axes.get(mark);
    return axis
      ? [{ mark, kind: findKind(kind, lexicon) ?? null, track: trackOf(null, kind, lexicon), axis }]
      : [];
  });
  const later = coverings.filter(({ plannedDay }) => plannedDay > after);
  const zoned = later.map(({ name, kind, zone }) => ({
    id: name,
    kind,
    zone,
    except: new Set<string>(),
  }));
  const hidden = hiddenByZones(zoned, inSpace, gridReader(grid), []);
  const due = new Map<string, string>();
  for (const { name, plannedDay } of later.toSorted((a, b) => (a.plannedDay < b.plannedDay ? 1 : -1)))
    for (const { mark } of hidden.get(name) ?? []) due.set(mark, plannedDay);
  return (mark) => due.get(mark) ?? null;
}
