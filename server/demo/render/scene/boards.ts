import { cross } from '#domain/frame/clip';
import type { GridReader } from '#domain/frame/grid-reader';
import { addScaled, lengthOf, sub, unit, type Vec } from '../vec.ts';
import type { Boards, HouseState } from './house-state.ts';
import { put, type Site } from './site.ts';

const BOARD_MM = 180;
const GAP_MM = 2;

/** The upper surface of a zone: one corner and the two sides from it; boards lie along the first. */
interface Surface {
  readonly corner: Vec;
  readonly along: Vec;
  readonly onward: Vec;
}

/** Floors and roofs, as far as they are laid. */
export function addBoards(site: Site, { boards, reader }: HouseState): void {
  for (const field of boards) addField(site, field, surfaceOf(field, reader));
}

function addField(site: Site, { lift, thick, laid }: Boards, { corner, along, onward }: Surface): void {
  const { random } = site;
  const [long, far] = [lengthOf(along), lengthOf(onward)];
  const [first, next] = [unit(along), unit(onward)];
  const across = cross(first, next);
  const up: Vec = across[2] < 0 ? [-across[0], -across[1], -across[2]] : across;
  const count = Math.round((far * laid) / BOARD_MM);
  const wide = far / Math.max(1, Math.round(far / BOARD_MM));
  for (let i = 0; i < count; i += 1) {
    // The last of a field that is not finished is not yet cut.
    const over = i === count - 1 && laid < 1 ? random.between(-400, 150) : 0;
    const middle = addScaled(addScaled(corner, first, (long + over) / 2), next, (i + 0.5) * wide);
    put(
      site,
      {
        middle: addScaled(middle, up, lift + thick / 2),
        axes: [first, next, up],
        half: [(long + over) / 2, wide / 2 - GAP_MM / 2, thick / 2],
      },
      'board',
    );
  }
}

function surfaceOf({ zone, along }: Boards, reader: GridReader): Surface {
  if (zone.shape === 'slope') return slopeOf(zone, reader);
  const [a, b] = zone.corners.map((corner) => {
    const read = reader.crossing(corner);
    if (!read.ok) throw new RangeError(`There is no crossing ${corner}.`);
    return read.value;
  });
  if (!a || !b) throw new RangeError('A floor is a rectangle between two crossings.');
  const corner: Vec = [Math.min(a.x, b.x), Math.min(a.y, b.y), zone.top];
  const [x, y]: [Vec, Vec] = [
    [Math.abs(b.x - a.x), 0, 0],
    [0, Math.abs(b.y - a.y), 0],
  ];
  return along === 'x' ? { corner, along: x, onward: y } : { corner, along: y, onward: x };
}

function slopeOf(zone: Extract<Boards['zone'], { shape: 'slope' }>, reader: GridReader): Surface {
  const other = zone.family === 'first' ? 'second' : 'first';
  const place = (label: string, family: 'first' | 'second') => {
    const read = reader.line(label, family);
    if (!read.ok) throw new RangeError(`There is no line ${label}.`);
    return read.value.at;
  };
  const point = (along: number, down: number, z: number): Vec =>
    zone.family === 'first' ? [down, along, z] : [along, down, z];
  const [from, to] = [place(zone.from, other), place(zone.to, other)];
  const corner = point(from, place(zone.eaves, zone.family), zone.eavesHeight);
  const end = point(to, place(zone.eaves, zone.family), zone.eavesHeight);
  const ridge = point(from, place(zone.ridge, zone.family), zone.ridgeHeight);
  return { corner, along: sub(end, corner), onward: sub(ridge, corner) };
}
