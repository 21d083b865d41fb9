import type { CoveringKind } from '../contract/shapes.ts';
import type { HalfSpace } from '../frame/clip.ts';
import { zoneShadow } from '../frame/drawing/zone-outline.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import type { Zone } from '../frame/zone.ts';
import { zoneBody } from '../frame/zone-body.ts';

/** Floors and ceilings that lie farther apart are no layers of one. Common practice: a floor with its services. */
export const LAYERS_APART_MM = 600;
/** What shares less than this only touches. */
const TOUCHING_MM = 1;

export interface ZonedLayer {
  readonly kind: CoveringKind;
  readonly zone: Zone;
}

type Span = readonly [low: number, high: number];

/** Where a zone lies, read once and compared with many. */
export interface Place {
  /** The line or lines that it stands on; what has others is at another place. */
  readonly on: string;
  /** Along them, and upwards: all must have something in common. */
  readonly spans: readonly Span[];
  /** Of floors and ceilings: from above, and how high. */
  readonly flat: {
    readonly height: Span;
    readonly corners: readonly (readonly [number, number])[];
    readonly sides: readonly HalfSpace[];
  } | null;
}

/** null: the grid does not read it, and it is nowhere. */
export function placeOf(zone: Zone, reader: GridReader): Place | null {
  const read = zoneBody(zone, reader);
  if (!read.ok) return null;
  if (zone.shape === 'flat') {
    const sides = read.body.filter(({ normal }) => normal[2] === 0);
    const flat = { height: [zone.bottom, zone.top] as const, corners: zoneShadow(zone, reader), sides };
    return { on: 'flat', spans: [], flat };
  }
  const across = zone.family === 'first' ? 'second' : 'first';
  const at = (label: string, family: 'first' | 'second') => {
    const line = reader.line(label, family);
    return line.ok ? line.value.at : NaN;
  };
  const [from, to] = [at(zone.from, across), at(zone.to, across)];
  const run: Span = [Math.min(from, to), Math.max(from, to)];
  const line = (label: string) => Math.round(at(label, zone.family));
  return zone.shape === 'wall'
    ? { on: `wall ${zone.family} ${line(zone.line)}`, spans: [run, [zone.bottom, zone.top]], flat: null }
    : { on: `slope ${zone.family} ${line(zone.eaves)} ${line(zone.ridge)}`, spans: [run], flat: null };
}

/**
 * Whether two zones are layers at one place: walls on one line that share run and height, whatever their faces;
 * floors and ceilings one over the other and close enough; slopes between the same lines that share some run.
 */
export function isSamePlace(a: Place, b: Place): boolean {
  if (a.on !== b.on) return false;
  if (a.flat === null || b.flat === null)
    return a.spans.every((span, i) => gapBetween(span, b.spans[i] as Span) <= -TOUCHING_MM);
  const isNear = gapBetween(a.flat.height, b.flat.height) <= LAYERS_APART_MM;
  // Of two convex bodies that lie apart one has a side with all of the other beyond it.
  return isNear && !isBeyond(a.flat.sides, b.flat.corners) && !isBeyond(b.flat.sides, a.flat.corners);
}

const gapBetween = (a: Span, b: Span) => Math.max(a[0], b[0]) - Math.min(a[1], b[1]);

function isBeyond(sides: readonly HalfSpace[], corners: readonly (readonly [number, number])[]): boolean {
  return sides.some(({ normal, limit }) =>
    corners.every(([x, y]) => normal[0] * x + normal[1] * y > limit - TOUCHING_MM),
  );
}

/**
 * Whether what `earlier` has hidden at the same place is out of sight for `later` too. Boards hide joists from
 * above and a ceiling from below, so that neither speaks for the other: what is asked for in vain can be left
 * out, and what is not asked for is lost. Something else belongs to the side on which it lies on.
 */
export function isHiddenAlike(earlier: ZonedLayer, later: ZonedLayer): boolean {
  if (earlier.zone.shape === 'wall' || earlier.kind === later.kind) return true;
  const [one, other] = [SIDE[earlier.kind], SIDE[later.kind]];
  if (one === null || other !== null) return one !== null && one === other;
  return one === 'above'
    ? surfaceOf(later.zone).top >= surfaceOf(earlier.zone).top
    : surfaceOf(later.zone).bottom <= surfaceOf(earlier.zone).bottom;
}

/** From where each kind hides what does not stand: common practice. null: from either. */
const SIDE = {
  floor: 'above',
  'roof-boards': 'above',
  ceiling: 'below',
  plaster: 'below',
  other: null,
} as const satisfies Record<CoveringKind, 'above' | 'below' | null>;

function surfaceOf(zone: Zone): { top: number; bottom: number } {
  if (zone.shape !== 'slope') return { top: zone.top, bottom: zone.bottom };
  return { top: zone.eavesHeight, bottom: zone.eavesHeight - zone.below };
}
