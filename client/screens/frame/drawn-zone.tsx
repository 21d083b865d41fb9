import type { Sheet } from '#domain/frame/drawing/sheet';
import { planView, rightward, OTHER_FAMILY } from '#domain/frame/drawing/views';
import { zoneCut, zoneShadow } from '#domain/frame/drawing/zone-outline';
import type { Mm } from '#domain/frame/length';
import type { GridReader } from '#domain/frame/grid-reader';
import type { Zone } from '#domain/frame/zone';
import { polyline } from './ink.ts';

/** The zone that is being drawn, over everything else of its sheet. */
export function DrawnZone({ sheet, zone, reader }: { sheet: Sheet; zone: Zone | null; reader: GridReader }) {
  const corners = zone ? cornersOn(sheet, zone, reader) : [];
  if (corners.length < 3) return null;
  return <path className="frame-ink frame-zone-drawn" d={`${polyline(corners)}Z`} />;
}

function cornersOn({ subject }: Sheet, zone: Zone, reader: GridReader) {
  if (subject.kind === 'plan')
    return zoneShadow(zone, reader).map(([x, y]) => planView(reader.grid)({ x: x as Mm, y: y as Mm }));
  if (zone.shape === 'wall' && zone.family !== subject.family) return [];
  const sign = rightward(reader.grid, OTHER_FAMILY[subject.family]);
  return zoneCut(zone, subject.family, subject.line.at, reader).map(([along, z]) => ({
    u: sign * along,
    v: -z,
  }));
}
