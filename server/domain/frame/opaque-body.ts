import type { Convex } from './clip.ts';
import type { GridReader } from './grid-reader.ts';
import type { Zone } from './zone.ts';
import { zoneBody, type ReadZone } from './zone-body.ts';

/** A closed face ends so far before its line: what lies on the line is seen from the open face. */
const BEFORE_LINE_MM = 10;

/**
 * What of a closed covering no eye passes, in house coordinates (mm), or what is wrong with its zone: all of
 * it; of a wall that is covered on one face only what lies on that side of its line.
 */
export function opaqueBody(zone: Zone, reader: GridReader): ReadZone {
  const read = zoneBody(zone, reader);
  if (!read.ok || zone.shape !== 'wall' || zone.face === 'both') return read;
  const line = reader.line(zone.line, zone.family);
  if (!line.ok) return read;
  const sign = zone.face === 'lower' ? 1 : -1;
  const side: Convex[number] = {
    normal: zone.family === 'first' ? [sign, 0, 0] : [0, sign, 0],
    limit: sign * line.value.at - BEFORE_LINE_MM,
  };
  return { ok: true, body: [...read.body, side] };
}
