import type { Crossing, Family, FamilyName, Grid, GridLine, Level, LinePlace } from './grid.ts';
import type { Mm } from './length.ts';
import { markKey, type Part } from './mark-order.ts';

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: 'unknown' | 'ambiguous' };

const UNKNOWN = { ok: false, problem: 'unknown' } as const;
const AMBIGUOUS = { ok: false, problem: 'ambiguous' } as const;

/** Reads what people write of one grid; made once a grid, since labels are taken apart for it. */
export interface GridReader {
  readonly grid: Grid;
  /**
   * A crossing: い三, い-3, いの三, イ三, full width, 又 for half a bay before or behind its line; the second
   * line first where that cannot be mistaken. Common practice.
   */
  crossing(text: string): Read<Crossing>;
  /** One line, with or without 通り or 又. */
  line(text: string, family: FamilyName): Read<LinePlace>;
  level(text: string): Level | undefined;
  /** The one form of the mark of two places, which reads back as them. */
  mark(first: LinePlace, second: LinePlace): string;
  /** Lines and the middles between them, in order. */
  places(family: FamilyName): readonly LinePlace[];
}

export function gridReader(grid: Grid): GridReader {
  const [first, second] = [indexed(grid.first), indexed(grid.second)];
  // Once: the report names thousands of stretches by them.
  const places = { first: allPlaces(first), second: allPlaces(second) };
  const levels = new Map(grid.levels.map((level) => [keyOf(markKey(level.label).parts), level]));
  return {
    grid,
    crossing: (text) => readCrossing(partsOf(text), first, second),
    line: (text, family) => {
      const lines = family === 'first' ? first : second;
      const place = placeOf(partsOf(text), lines);
      return place ? { ok: true, value: lineIn(lines, place) } : UNKNOWN;
    },
    mark: (one, other) => joined(one, other, first, second),
    level: (text) => levels.get(keyOf(markKey(text).parts)),
    places: (family) => places[family],
  };
}

interface Indexed extends Family {
  readonly byKey: ReadonlyMap<string, number>;
}

/** A line by its index, and whether half a bay on. */
interface Place {
  readonly index: number;
  readonly half: boolean;
}

function indexed({ lines }: Family): Indexed {
  return { lines, byKey: new Map(lines.map(({ label }, i) => [keyOf(markKey(label).parts), i])) };
}

const keyOf = (parts: readonly Part[]) => JSON.stringify(parts);

function partsOf(text: string): readonly Part[] {
  return markKey(text.normalize('NFKC').replace(/\s*(?:通り?|とおり|line)\s*$/iu, '')).parts;
}

function readCrossing(parts: readonly Part[], first: Indexed, second: Indexed): Read<Crossing> {
  const straight = splits(parts, first, second);
  const turned = straight.length > 0 ? [] : splits(parts, second, first).map(([b, a]) => [a, b] as const);
  const [only, ...others] = [...straight, ...turned];
  if (!only) return UNKNOWN;
  if (others.length > 0) return AMBIGUOUS;
  const [one, other] = [lineIn(first, only[0]), lineIn(second, only[1])];
  return { ok: true, value: { x: one.at, y: other.at, mark: joined(one, other, first, second) } };
}

/** Every way of cutting the parts into a line of each family. */
function splits(parts: readonly Part[], one: Indexed, other: Indexed): (readonly [Place, Place])[] {
  return parts.slice(1).flatMap((_, i) => {
    const [a, b] = [placeOf(parts.slice(0, i + 1), one), placeOf(parts.slice(i + 1), other)];
    return a && b ? [[a, b] as const] : [];
  });
}

/** 又 stands before or behind a label, and so at any part of it: 又x2. */
function placeOf(parts: readonly Part[], { lines, byKey }: Indexed): Place | null {
  const index = byKey.get(keyOf(parts.map(withoutHalf)));
  const half = parts.some((part) => withoutHalf(part) !== part);
  return index === undefined || (half && index === lines.length - 1) ? null : { index, half };
}

function withoutHalf(part: Part): Part {
  if (part[0] === 2) return part[2] === 0 ? part : [2, part[1], 0];
  return part[1] % 1 === 0 ? part : [part[0], Math.floor(part[1])];
}

function lineIn({ lines }: Family, { index, half }: Place): LinePlace {
  const line = lines[index] as GridLine;
  if (!half) return line;
  const next = lines[index + 1] as GridLine;
  return { label: `又${line.label}`, at: ((line.at + next.at) / 2) as Mm };
}

function allPlaces(family: Indexed): LinePlace[] {
  const last = family.lines.length - 1;
  return family.lines.flatMap((line, index) =>
    index < last ? [line, lineIn(family, { index, half: true })] : [line],
  );
}

/** い三; a stroke between labels that would run into one, 又 behind where before the line it would slip. */
function joined(one: LinePlace, other: LinePlace, first: Indexed, second: Indexed): string {
  const bare = other.label.replace(/^又/u, '');
  const behind = bare === other.label ? [] : [`${one.label}${bare}又`, `${one.label}-${bare}又`];
  const forms = [`${one.label}${other.label}`, `${one.label}-${other.label}`, ...behind];
  return forms.find((form) => isReadAs(form, one, other, first, second)) ?? `${one.label} ${other.label}`;
}

function isReadAs(form: string, one: LinePlace, other: LinePlace, first: Indexed, second: Indexed): boolean {
  const [only, ...others] = splits(partsOf(form), first, second);
  if (!only || others.length > 0) return false;
  return lineIn(first, only[0]).at === one.at && lineIn(second, only[1]).at === other.at;
}
