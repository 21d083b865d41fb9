import { gridReader } from '#domain/frame/grid-reader';
import type { InventedCovering } from '#domain/frame/invented/invented-house';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { findKind, trackOf } from '#domain/lexicon/track-of-kind';
import { hiddenByZones } from '#domain/record/zone-hides';
import type { HousePlan } from './house-plan.ts';

/** Of each member the day on which the first of these coverings hides it; later than all where none does. */
export function dueDays(
  { axes, members, grid }: HousePlan,
  coverings: readonly InventedCovering[],
): (mark: string) => string {
  const lexicon = lexiconOf([]);
  const inSpace = members.flatMap(({ mark, kind }) => {
    const axis = axes.get(mark);
    return axis
      ? [{ mark, kind: findKind(kind, lexicon) ?? null, track: trackOf(null, kind, lexicon), axis }]
      : [];
  });
  const zoned = coverings.map(({ name, kind, zone }) => ({
    id: name,
    kind,
    zone,
    except: new Set<string>(),
  }));
  const hidden = hiddenByZones(zoned, inSpace, gridReader(grid), []);
  const due = new Map<string, string>();
  for (const { name, plannedDay } of coverings.toSorted((a, b) => (a.plannedDay < b.plannedDay ? 1 : -1)))
    for (const { mark } of hidden.get(name) ?? []) due.set(mark, plannedDay);
  return (mark) => due.get(mark) ?? NEVER;
}

const NEVER = '9999-12-31';
