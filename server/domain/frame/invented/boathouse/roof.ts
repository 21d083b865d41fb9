import type { InventedMember } from '../invented-house.ts';
import type { Lines } from './lines.ts';
import { HEIGHTS, SECTIONS, roofMeasures, type BoathouseSize, type RoofMeasures } from './measures.ts';
import { piecesOf } from './pieces.ts';

const LEVEL = '軒';
const PLACE = '小屋';
const TIES = ['一', '二', '三', '四'];
/** Upper side of the roof beams, on which struts stand. */
const FOOT = HEIGHTS.roofBeam + SECTIONS.beam[1] / 2;

/** Steps up from the eaves: on each roof beam struts, on these purlins and the ridge, and rafters over all. */
export function roofOf(lines: Lines, size: BoathouseSize): InventedMember[] {
  const measures = roofMeasures(size);
  const steps = stepsOf(lines, measures);
  return [
    ...steps.flatMap((step) => struts(lines, step)),
    ...steps.map((step) => purlin(lines, step)),
    ...ties(lines, steps),
    ...rafters(lines, measures),
    ...eavesEdges(lines, measures),
  ];
}

/** A line along the house on which the roof lies: every half bay between the eaves. */
interface Step {
  readonly line: string;
  readonly isRidge: boolean;
  /** Of the axis of what lies there. */
  readonly base: number;
  readonly depth: number;
}

function stepsOf({ across, ridge }: Lines, { under }: RoofMeasures): Step[] {
  return across.slice(1, -1).map((line) => {
    const at = across.indexOf(line);
    const isRidge = line === ridge;
    const depth = (isRidge ? SECTIONS.ridge : SECTIONS.purlin)[1];
    return { line, isRidge, depth, base: under(Math.min(at, across.length - 1 - at), depth) };
  });
}

function struts({ first }: Lines, { line, isRidge, base, depth }: Step): InventedMember[] {
  const kind = isRidge ? '棟束' : '小屋束';
  const strut = piecesOf(kind, 'strut');
  const lie = { level: LEVEL, base: FOOT, top: base - depth / 2, place: PLACE } as const;
  return first.map((f) => strut(`${f}${line}${kind}`, { from: f + line, ...lie }));
}

function purlin({ westmost, eastmost }: Lines, { line, isRidge, base }: Step): InventedMember {
  const lie = { from: westmost + line, to: eastmost + line, level: LEVEL, base, place: PLACE } as const;
  return isRidge ? piecesOf('棟木', 'ridge')('棟木', lie) : piecesOf('母屋', 'purlin')(`${line}母屋`, lie);
}

/** Rails through the struts under the ridge, about one for each three shaku of their height. */
function ties({ westmost, eastmost, ridge }: Lines, steps: readonly Step[]): InventedMember[] {
  const { base: over = FOOT } = steps.find(({ isRidge }) => isRidge) ?? {};
  const count = Math.min(TIES.length, Math.max(1, Math.floor((over - FOOT) / 910)));
  const tie = piecesOf('小屋貫', 'rail');
  return TIES.slice(0, count).map((n, i) =>
    tie(`小屋貫${n}`, {
      ...{ from: westmost + ridge, to: eastmost + ridge, level: LEVEL, place: PLACE },
      base: FOOT + ((i + 1) * (over - FOOT)) / (count + 1),
    }),
  );
}

/** At each half bay from both eaves to the ridge. */
function rafters(
  { along, across, ridge, lakeside, hillside }: Lines,
  { rafter: heightAt }: RoofMeasures,
): InventedMember[] {
  const rafter = piecesOf('垂木', 'rafter');
  const lie = {
    level: LEVEL,
    base: heightAt(0),
    top: heightAt(across.indexOf(ridge)),
    place: PLACE,
  } as const;
  return along.flatMap((f) =>
    [lakeside, hillside].map((s) => rafter(`${f}${s}垂木`, { from: f + s, to: f + ridge, ...lie })),
  );
}

/** Boards over the rafters' feet. */
function eavesEdges(
  { westmost, eastmost, lakeside, hillside }: Lines,
  { rafter: heightAt }: RoofMeasures,
): InventedMember[] {
  const edge = piecesOf('広小舞', 'edge');
  const lie = { level: LEVEL, base: heightAt(0) + SECTIONS.edge[1] / 2, place: PLACE } as const;
  return [lakeside, hillside].map((s) =>
    edge(`${s}広小舞`, { from: westmost + s, to: eastmost + s, ...lie }),
  );
}
