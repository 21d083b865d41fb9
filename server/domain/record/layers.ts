import type { CoveringKind } from '../contract/shapes.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { compareText } from '../frame/mark-order.ts';
import type { Zone } from '../frame/zone.ts';
import { groupBy } from '../group-by.ts';
import { hiddenSince, type HiddenSince, type Layer } from './hidden-since.ts';
import { isHiddenAlike, isSamePlace, placeOf, type Place } from './same-place.ts';
import type { Stretch } from './stretches.ts';

/** What of a covering decides what it hides, and from when. */
export interface LayerCovering {
  readonly id: string;
  readonly name: string;
  readonly kind: CoveringKind;
  /** Without one it only lists its members, and is nobody's layer. */
  readonly zone?: Zone | null;
  readonly plannedDay: string | null;
  readonly closedAt: string | null;
  /** The day of `closedAt` in the house's zone. */
  readonly closedDay: string | null;
  readonly hides: readonly { readonly mark: string; readonly stretch?: Stretch | null }[];
}

/** The coverings of a house as layers over each other. */
export interface Layers {
  /** The others at the same place, in the order of their days; those without one last. */
  beside(covering: string): readonly LayerCovering[];
  /** From when a stretch of a member under a covering is out of sight. */
  hidden(covering: LayerCovering, mark: string, stretch: Stretch): HiddenSince;
}

export function layersOf(coverings: readonly LayerCovering[], reader: GridReader | null): Layers {
  const neighbours = neighboursIn(coverings, reader);
  const alike = new Map<string, readonly LayerCovering[]>();
  const stretches = new Map<string, ReadonlyMap<string, Stretch | null>>();
  const hidesOf = (covering: LayerCovering) => {
    const known = stretches.get(covering.id);
    if (known) return known;
    const made = new Map(covering.hides.map(({ mark, stretch }) => [mark, stretch ?? null]));
    stretches.set(covering.id, made);
    return made;
  };
  const deciding = (covering: LayerCovering) => {
    const known = alike.get(covering.id);
    if (known) return known;
    const made = (neighbours.get(covering.id) ?? []).filter((other) => isDecidedBy(covering, other));
    alike.set(covering.id, made);
    return made;
  };
  return {
    beside: (covering) => neighbours.get(covering) ?? [],
    hidden(covering, mark, stretch) {
      const others: Layer[] = [];
      for (const other of deciding(covering)) {
        const hides = hidesOf(other).get(mark);
        if (hides !== undefined) others.push(layerOf(other, hides ?? stretch));
      }
      return hiddenSince(layerOf(covering, stretch), others);
    },
  };
}

function layerOf({ id, zone, closedAt, plannedDay }: LayerCovering, stretch: Stretch): Layer {
  return { id, face: zone?.shape === 'wall' ? zone.face : 'both', closedAt, plannedDay, stretch };
}

function isDecidedBy({ zone, kind }: LayerCovering, other: LayerCovering): boolean {
  if (!zone || !other.zone) return false;
  return isHiddenAlike({ kind: other.kind, zone: other.zone }, { kind, zone });
}

type Placed = readonly [covering: LayerCovering, place: Place];

function neighboursIn(
  coverings: readonly LayerCovering[],
  reader: GridReader | null,
): Map<string, LayerCovering[]> {
  if (reader === null) return new Map();
  const placed = coverings.flatMap((covering): Placed[] => {
    const place = covering.zone ? placeOf(covering.zone, reader) : null;
    return place ? [[covering, place]] : [];
  });
  return new Map(
    [...groupBy(placed, ([, { on }]) => on).values()].flatMap((group) =>
      group.map(([covering, place]) => {
        const others = group.filter(([other, there]) => other !== covering && isSamePlace(place, there));
        return [covering.id, others.map(([other]) => other).sort(byDay)] as const;
      }),
    ),
  );
}

function byDay(a: LayerCovering, b: LayerCovering): number {
  const day = ({ closedDay, plannedDay }: LayerCovering) => closedDay ?? plannedDay ?? '9999';
  return (
    compareText(day(a), day(b)) ||
    compareText(a.closedAt ?? '9999', b.closedAt ?? '9999') ||
    compareText(a.name, b.name) ||
    compareText(a.id, b.id)
  );
}
