import type { InventedMember } from '../invented-house.ts';
import type { Lines } from './lines.ts';
import { HEIGHTS, railHeights } from './measures.ts';
import { piecesOf } from './pieces.ts';
import { gables, kneeWalls, lowerWalls, type WallRun } from './walls.ts';

const RAIL_NAMES = ['地貫', '腰貫', '内法貫', '天井貫'];
const [DOWN, UP] = ['一階', '二階'] as const;

/** Posts of both storeys, foot ties, rails, beams and braces. */
export function frameOf(lines: Lines): InventedMember[] {
  return [
    ...posts(lines),
    ...footTies(lines),
    ...lowerWalls(lines).flatMap((run) =>
      rails(run, { level: '1F', place: DOWN, wall: HEIGHTS.lowerWall, least: 3 }),
    ),
    ...[...kneeWalls(lines), ...gables(lines)].flatMap((run) =>
      rails(run, { level: '2F', place: UP, wall: HEIGHTS.upperWall, least: 2 }),
    ),
    ...beams(lines),
    ...studsAndBraces(lines),
    ...kneeBraces(lines),
    ...angles(lines),
  ];
}

function posts({ first, second }: Lines): InventedMember[] {
  const post = piecesOf('管柱', 'post');
  const crossings = first.flatMap((f) => second.map((s) => f + s));
  return [
    ...crossings.map((mark) => post(mark, { from: mark, level: '1F', ...HEIGHTS.lowerPost, place: DOWN })),
    ...crossings.map((mark) =>
      post(`二階 ${mark}`, { from: mark, level: '2F', ...HEIGHTS.upperPost, place: UP }),
    ),
  ];
}

/** Through the posts above their stones; none across the mouth of the slip, where the boat comes in. */
function footTies({ first, second, westmost, slip, lakeside, hillside }: Lines): InventedMember[] {
  const tie = piecesOf('足固め', 'footTie');
  const lie = (from: string, to: string) =>
    ({ from, to, level: '1F', base: HEIGHTS.footTie, place: '床下' }) as const;
  return [
    ...first.map((f) => tie(`${f}通り足固め`, lie(f + lakeside, f + hillside))),
    ...second.map((s) => tie(`${s}通り足固め`, lie(westmost + s, slip + s))),
  ];
}

interface WallOf {
  readonly level: '1F' | '2F';
  readonly place: string;
  readonly wall: number;
  readonly least: number;
}

function rails({ line, ends: [from, to] }: WallRun, { level, place, wall, least }: WallOf): InventedMember[] {
  const prefix = level === '2F' ? `${UP} ` : '';
  return railHeights(wall, least).map((base, i) => {
    const kind = RAIL_NAMES[i] ?? '貫';
    return piecesOf(kind, 'rail')(`${prefix}${line}通り${kind}`, { from, to, level, base, place });
  });
}

function beams({ first, westmost, eastmost, lakeside, hillside }: Lines): InventedMember[] {
  const [floorBeam, roofBeam] = [piecesOf('床梁', 'beam'), piecesOf('小屋梁', 'beam')];
  const [girt, plate] = [piecesOf('胴差', 'beam'), piecesOf('桁', 'plate')];
  const over = (f: string) => ({ from: f + lakeside, to: f + hillside });
  const side = (s: string) => ({ from: westmost + s, to: eastmost + s });
  const sides = [lakeside, hillside];
  return [
    ...first.map((f) =>
      floorBeam(`${f}通り床梁`, { ...over(f), level: '2F', base: HEIGHTS.floorBeam, place: DOWN }),
    ),
    ...sides.map((s) =>
      girt(`${s}通り胴差`, { ...side(s), level: '2F', base: HEIGHTS.floorBeam, place: DOWN }),
    ),
    ...sides.map((s) => plate(`${s}通り桁`, { ...side(s), level: '軒', base: HEIGHTS.plate, place: UP })),
    ...first.map((f) =>
      roofBeam(`${f}通り小屋梁`, { ...over(f), level: '軒', base: HEIGHTS.roofBeam, place: '小屋' }),
    ),
  ];
}

/** The gables are boarded: studs at each half bay for the boards, and a brace at each end. */
function studsAndBraces({ across, westmost, eastmost, second }: Lines): InventedMember[] {
  const [stud, brace] = [piecesOf('間柱', 'stud'), piecesOf('筋かい', 'brace')];
  const upper = { level: '2F', base: 0, top: HEIGHTS.upperWall, place: UP } as const;
  const halves = across.filter((s) => s.startsWith('又'));
  const ends = [
    [second[0], second[1]],
    [second.at(-1), second.at(-2)],
  ];
  return [westmost, eastmost].flatMap((f) => [
    ...halves.map((s) => stud(`二階 ${f}${s}間柱`, { from: f + s, ...upper })),
    ...ends.map(([from = '', to = '']) =>
      brace(`二階 ${f}${from}筋かい`, { from: f + from, to: f + to, ...upper }),
    ),
  ]);
}

/** At the mouth of the slip, which has neither wall nor tie: half a bay down and in. */
function kneeBraces({ slip, eastmost, lakeside }: Lines): InventedMember[] {
  const knee = piecesOf('方杖', 'knee');
  const middle = `又${slip}${lakeside}`;
  const lie = (from: string) =>
    ({
      from,
      to: middle,
      level: '1F',
      base: HEIGHTS.lowerWall - 700,
      top: HEIGHTS.lowerWall,
      place: DOWN,
    }) as const;
  return [slip, eastmost].map((f) => knee(`${f}${lakeside}方杖`, lie(f + lakeside)));
}

/** Across each corner in plan, half a bay each way, under the loft floor and at the eaves. */
function angles({ westmost, eastmost, lakeside, hillside, slip, second }: Lines): InventedMember[] {
  const angle = piecesOf('火打', 'angle');
  const before = second.at(-2) ?? '';
  const corners = [
    [westmost, `又${westmost}`, lakeside, `又${lakeside}`],
    [eastmost, `又${slip}`, lakeside, `又${lakeside}`],
    [westmost, `又${westmost}`, hillside, `又${before}`],
    [eastmost, `又${slip}`, hillside, `又${before}`],
  ] as const;
  return corners.flatMap(([f, inF, s, inS]) => {
    const lie = { from: f + inS, to: inF + s };
    return [
      angle(`${f}${s}火打`, { ...lie, level: '2F', base: HEIGHTS.floorBeam, place: DOWN }),
      angle(`小屋 ${f}${s}火打`, { ...lie, level: '軒', base: HEIGHTS.plate, place: '小屋' }),
    ];
  });
}
