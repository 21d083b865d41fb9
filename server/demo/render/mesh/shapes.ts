import { cross, dot } from '#domain/frame/clip';
import { pointIn, type OrientedBox } from '../oriented-box.ts';
import { UP, add, addScaled, lengthOf, mixVec, scale, sub, unit, type Vec } from '../vec.ts';
import type { Thing } from './mesh.ts';
import type { MeshBuilder } from './mesh-builder.ts';

/** Six faces. Its edges look broken, which the surface does: the outline is that of the box. */
export function addBox(mesh: MeshBuilder, box: OrientedBox, thing: Omit<Thing, 'box'>): void {
  mesh.begin({ ...thing, box });
  for (const axis of [0, 1, 2] as const)
    for (const side of [-1, 1]) {
      const locals = faceOf(box.half, axis, side);
      const towards = scale(box.axes[axis], side);
      mesh.flat(
        locals.map((local) => pointIn(box, local)),
        locals,
        towards,
      );
    }
}

const AROUND = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

function faceOf(half: Vec, axis: 0 | 1 | 2, side: number): Vec[] {
  const [one, other] = [(axis + 1) % 3, (axis + 2) % 3];
  return AROUND.map(([a, b]) => {
    const local: [number, number, number] = [0, 0, 0];
    local[axis] = side * half[axis];
    local[one] = a * half[one]!;
    local[other] = b * half[other]!;
    return local;
  });
}

/** A piece of timber from point to point: thickness across, height upward. */
export function stick(
  from: Vec,
  to: Vec,
  [thick, high]: readonly [number, number],
  upward = UP,
): OrientedBox {
  const along = unit(sub(to, from));
  const steep = Math.abs(dot(along, upward)) > 0.999;
  const across = unit(cross(steep ? [0, 1, 0] : upward, along));
  return {
    middle: mixVec(from, to, 0.5),
    axes: [along, across, cross(along, across)],
    half: [lengthOf(sub(to, from)) / 2, thick / 2, high / 2],
  };
}

/** An upright box with its foot at z, turned about the plumb line. */
export function block([x, y, z]: Vec, [long, wide, high]: Vec, turn = 0): OrientedBox {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return {
    middle: [x, y, z + high / 2],
    axes: [[c, s, 0], [-s, c, 0], UP],
    half: [long / 2, wide / 2, high / 2],
  };
}

export interface Tube {
  readonly through: readonly Vec[];
  /** Half sizes across, the first square to `upward`. */
  readonly radii: readonly [number, number];
  readonly upward?: Vec;
  readonly sides?: number;
  readonly closed?: boolean;
}

/** A stick, rope or pole of oval section along a line of points. */
export function addTube(mesh: MeshBuilder, tube: Tube, thing: Thing): void {
  const { through, sides = 8, closed = true } = tube;
  mesh.begin(thing);
  let run = 0;
  const rings = through.map((point, i) => {
    run += i > 0 ? lengthOf(sub(point, through[i - 1]!)) : 0;
    return ringAt(mesh, tube, i, run);
  });
  for (let i = 0; i + 1 < rings.length; i += 1)
    for (let k = 0; k < sides; k += 1) {
      const next = (k + 1) % sides;
      mesh.quad(rings[i]![k]!, rings[i]![next]!, rings[i + 1]![next]!, rings[i + 1]![k]!);
    }
  if (closed) for (const end of [0, through.length - 1]) addLid(mesh, tube, end);
}

function crossSection({ through, radii, upward = UP, sides = 8 }: Tube, i: number) {
  const along = unit(sub(through[Math.min(i + 1, through.length - 1)]!, through[Math.max(i - 1, 0)]!));
  const one = unit(cross(Math.abs(dot(along, upward)) > 0.999 ? [0.6, 0.8, 0] : upward, along));
  const other = cross(along, one);
  return Array.from({ length: sides }, (_, k) => {
    const [c, s] = [Math.cos((2 * Math.PI * k) / sides), Math.sin((2 * Math.PI * k) / sides)];
    return {
      point: addScaled(addScaled(through[i]!, one, c * radii[0]), other, s * radii[1]),
      normal: unit(addScaled(scale(one, c / radii[0]), other, s / radii[1])),
      local: [0, c * radii[0], s * radii[1]] as const,
    };
  });
}

function ringAt(mesh: MeshBuilder, tube: Tube, i: number, run: number): number[] {
  return crossSection(tube, i).map(({ point, normal, local }) =>
    mesh.vertex(point, normal, [run, local[1], local[2]]),
  );
}

function addLid(mesh: MeshBuilder, tube: Tube, end: number): void {
  const { through } = tube;
  const inward = through[end === 0 ? 1 : end - 1]!;
  const ring = crossSection(tube, end);
  mesh.flat(
    ring.map(({ point }) => point),
    ring.map(({ local }) => local),
    sub(through[end]!, inward),
  );
}

export interface Sheet {
  readonly columns: number;
  readonly rows: number;
  /** A point for each place on it; both from 0 to 1. */
  readonly at: (u: number, v: number) => Vec;
  /** Where it comes back to its beginning: around a stone. */
  readonly wraps?: boolean;
  /** The side that is its upper one. */
  readonly towards?: Vec;
  /** Leaves out a field of it. */
  readonly open?: (u: number, v: number) => boolean;
  readonly local?: (point: Vec, u: number, v: number) => Vec;
}

/** A smooth surface over a net of points. */
export function addSheet(mesh: MeshBuilder, sheet: Sheet, thing: Thing): void {
  const { columns, rows, at, local = (point: Vec) => point } = sheet;
  mesh.begin(thing);
  const points = Array.from({ length: rows + 1 }, (_, j) =>
    Array.from({ length: columns + 1 }, (_, i) => at(i / columns, j / rows)),
  );
  const numbers = points.map((row, j) =>
    row.map((point, i) =>
      mesh.vertex(point, normalAt(points, i, j, sheet), local(point, i / columns, j / rows)),
    ),
  );
  for (let j = 0; j < rows; j += 1)
    for (let i = 0; i < columns; i += 1) {
      if (sheet.open?.((i + 0.5) / columns, (j + 0.5) / rows)) continue;
      mesh.quad(numbers[j]![i]!, numbers[j]![i + 1]!, numbers[j + 1]![i + 1]!, numbers[j + 1]![i]!);
    }
}

function normalAt(
  points: readonly Vec[][],
  i: number,
  j: number,
  { columns, rows, wraps, towards }: Sheet,
): Vec {
  const row = points[j]!;
  const [before, after] = wraps
    ? [row[(i + columns - 1) % columns]!, row[(i + 1) % columns]!]
    : [row[Math.max(0, i - 1)]!, row[Math.min(columns, i + 1)]!];
  const [above, below] = [points[Math.max(0, j - 1)]![i]!, points[Math.min(rows, j + 1)]![i]!];
  const normal = unit(cross(sub(after, before), sub(below, above)));
  return towards && dot(normal, towards) < 0 ? scale(normal, -1) : normal;
}

export interface Blob {
  readonly middle: Vec;
  readonly radii: Vec;
  readonly segments: number;
  /** How far a direction reaches, about 1. */
  readonly reach: (direction: Vec) => number;
  /** Nothing is higher than this share of the upward radius: the top of a stone that bears a post. */
  readonly flatTop?: number;
}

export function addBlob(mesh: MeshBuilder, blob: Blob, thing: Thing): void {
  const { middle, radii, segments, reach, flatTop = Infinity } = blob;
  const at = (u: number, v: number): Vec => {
    const [turn, fall] = [2 * Math.PI * u, Math.PI * v];
    const direction: Vec = [Math.sin(fall) * Math.cos(turn), Math.sin(fall) * Math.sin(turn), Math.cos(fall)];
    const far = reach(direction);
    const up = Math.min(direction[2] * radii[2] * far, radii[2] * flatTop);
    return add(middle, [direction[0] * radii[0] * far, direction[1] * radii[1] * far, up]);
  };
  const local = (point: Vec) => sub(point, middle);
  addSheet(mesh, { columns: segments * 2, rows: segments, at, local, wraps: true }, thing);
}

/** A thin four-cornered thing with two sides: a leaf, a chip. */
export function addLeaf(mesh: MeshBuilder, corners: readonly Vec[], thing: Thing): void {
  mesh.begin(thing);
  const locals: Vec[] = [
    [0, 0, 0],
    [0.5, 0, 0],
    [1, 0, 0],
    [0.5, 0, 0],
  ];
  mesh.flat(corners, locals, UP);
}
