import type { CoveringKind } from '../contract/shapes.ts';
import { boxOf, type Box } from '../frame/box-of.ts';
import { clipAxis, directionOf, type Convex } from '../frame/clip.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import type { Axis } from '../frame/set-out.ts';
import type { Stage, Track } from '../frame/stage.ts';
import type { Zone } from '../frame/zone.ts';
import { zoneBody } from '../frame/zone-body.ts';
import { formOf, needOf, type HidableKind, type StatedRequirement } from './requirements-of.ts';
import { SHORTEST_GAP_MM, type Stretch } from './stretches.ts';

export interface MemberInSpace {
  readonly mark: string;
  readonly kind: HidableKind;
  readonly track: Track;
  readonly axis: Axis;
}

/** Something that lies in a zone and over what is in it. */
export interface Zoned {
  readonly id: string;
  readonly zone: Zone;
  /** Members that lie in the zone and are listed by hand or stay visible. */
  readonly except: ReadonlySet<string>;
}

export interface ZonedCovering extends Zoned {
  readonly kind: CoveringKind;
}

export interface HiddenByZone {
  readonly mark: string;
  readonly least: Stage;
  readonly views: number;
  readonly stretch: Stretch;
}

/** What runs more across a wall than in it only pierces it: from 10° to its plane on, as sine. */
const PIERCES = Math.sin((10 * Math.PI) / 180);

/**
 * What each zone hides of these members, by covering, in their order: the axis clipped to the zone (design
 * 3.3) where the kind is hidden by such a covering. A zone that the grid no longer reads hides nothing.
 */
export function hiddenByZones(
  coverings: readonly ZonedCovering[],
  members: readonly MemberInSpace[],
  reader: GridReader,
  stated: readonly StatedRequirement[],
): Map<string, HiddenByZone[]> {
  const inside = lyingInZones(coverings, members, reader);
  return new Map(
    coverings.map(({ id, kind, zone }) => {
      const form = formOf(kind, zone);
      const hidden = (inside.get(id) ?? []).flatMap(({ member, stretch }) => {
        const need = needOf(member.kind, member.track, { kind, form }, stated);
        return need ? [{ mark: member.mark, ...need, stretch }] : [];
      });
      return [id, hidden];
    }),
  );
}

/** What of each member lies in each zone, whatever its kind. In a zone that the grid no longer reads lies nothing. */
export function lyingInZones<M extends Pick<MemberInSpace, 'mark' | 'axis'>>(
  zones: readonly Zoned[],
  members: readonly M[],
  reader: GridReader,
): Map<string, { readonly member: M; readonly stretch: Stretch }[]> {
  const boxed = members.map((member) => ({ member, box: boxOfAxis(member.axis) }));
  return new Map(
    zones.map((zoned) => {
      const read = zoneBody(zoned.zone, reader);
      if (!read.ok) return [zoned.id, []];
      const zone = boxOf(read.body);
      const near = boxed.filter(({ box }) => isNear(box, zone)).map(({ member }) => member);
      return [zoned.id, lyingIn(zoned, read.body, near)];
    }),
  );
}

function boxOfAxis({ start, end }: Axis): Box {
  return {
    low: [Math.min(start.x, end.x), Math.min(start.y, end.y), Math.min(start.z, end.z)],
    high: [Math.max(start.x, end.x), Math.max(start.y, end.y), Math.max(start.z, end.z)],
  };
}

/** More than rounding may err by: only what surely lies apart is not clipped. */
const APART_MM = 1;

function isNear(a: Box, b: Box): boolean {
  return (
    a.low[0] - b.high[0] < APART_MM &&
    b.low[0] - a.high[0] < APART_MM &&
    a.low[1] - b.high[1] < APART_MM &&
    b.low[1] - a.high[1] < APART_MM &&
    a.low[2] - b.high[2] < APART_MM &&
    b.low[2] - a.high[2] < APART_MM
  );
}

function lyingIn<M extends Pick<MemberInSpace, 'mark' | 'axis'>>(
  { zone, except }: Zoned,
  body: Convex,
  members: readonly M[],
): { member: M; stretch: Stretch }[] {
  return members.flatMap((member) => {
    const stretch = clipAxis(member.axis, body);
    if (!stretch || stretch.to - stretch.from < SHORTEST_GAP_MM) return [];
    if (except.has(member.mark) || pierces(member.axis, zone)) return [];
    return [{ member, stretch }];
  });
}

function pierces(axis: Axis, zone: Zone): boolean {
  if (zone.shape !== 'wall') return false;
  const [x, y] = directionOf(axis);
  return Math.abs(zone.family === 'first' ? x : y) > PIERCES;
}
