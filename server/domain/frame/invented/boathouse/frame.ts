import type { InventedMember } from '../invented-house.ts';
import type { Lines } from './lines.ts';
import { HEIGHTS, groundFloorOf, railHeights, type BoathouseSize } from './measures.ts';
import { piecesOf } from './pieces.ts';
import { gables, kneeWalls, lowerWalls, type WallRun } from './walls.ts';

const RAIL_NAMES = ['地貫', '腰貫', '内法貫', '天井貫'];
const [DOWN, UP] = ['一階', '二階'] as const;

/** Posts of each storey, foot ties, rails, beams and braces. */
export function frameOf(lines: Lines, size: BoathouseSize): InventedMember[] {
  const hasLoft = size.storeys === 2;
  const { wall } = groundFloorOf(size);
  return [
    ...posts(lines, size),
    ...footTies(lines),
    ...lowerWalls(lines).flatMap((run) => rails(run, { level: '1F', place: DOWN, wall, least: 3 })),
    ...(hasLoft ? [...kneeWalls(lines), ...gables(lines)] : []).flatMap((run) =>
      rails(run, { level: '2F', place: UP, wall: HEIGHTS.upperWall, least: 2 }),
    ),
    ...(hasLoft ? floorBeams(lines) : []),
    ...roofBeams(lines, hasLoft ? UP : DOWN),
    ...(hasLoft ? studsAndBraces(lines) : []),
    ...kneeBraces(lines, wall),
    ...angles(lines, hasLoft),
  ];
}

function posts({ first, second, lakeside, hillside }: Lines, size: BoathouseSize): InventedMember[] {
  const post = piecesOf('管柱', 'post');
  const { postUnderEaves, postWithin } = groundFloorOf(size);
  const crossings = first.flatMap((f) =>
    second.map((s) => ({ mark: f + s, isUnderEaves: s === lakeside || s === hillside })),
  );
  const lower = crossings.map(({ mark, isUnderEaves }) => {
    const top = isUnderEaves ? postUnderEaves : postWithin;
    return post(mark, { from: mark, level: '1F', base: HEIGHTS.foot, top, place: DOWN });
  });
  if (size.storeys === 1) return lower;
  const upper = crossings.map(({ mark, isUnderEaves }) => {
    const top = isUnderEaves ? HEIGHTS.upperPostUnderEaves : HEIGHTS.upperPostWithin;
    return post(`二階 ${mark}`, { from: mark, level: '2F', base: HEIGHTS.upperFoot, top, place: UP });
  });
  return [...lower, ...upper];
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

function floorBeams(lines: Lines): InventedMember[] {
  const [floorBeam, girt] = [piecesOf('床梁', 'beam'), piecesOf('胴差', 'beam')];
  const lie = { level: '2F', base: HEIGHTS.floorBeam, place: DOWN } as const;
  return [
    ...lines.first.map((f) => floorBeam(`${f}通り床梁`, { ...acrossAt(lines, f), ...lie })),
    ...sidesOf(lines).map((s) => girt(`${s}通り胴差`, { ...alongAt(lines, s), ...lie })),
  ];
}

/** Plates over the posts of the long walls, and the beams that lie across on them. */
function roofBeams(lines: Lines, place: string): InventedMember[] {
  const [plate, roofBeam] = [piecesOf('桁', 'plate'), piecesOf('小屋梁', 'beam')];
  const beam = { level: '軒', base: HEIGHTS.roofBeam, place: '小屋' } as const;
  return [
    ...sidesOf(lines).map((s) =>
      plate(`${s}通り桁`, { ...alongAt(lines, s), level: '軒', base: HEIGHTS.plate, place }),
    ),
    ...lines.first.map((f) => roofBeam(`${f}通り小屋梁`, { ...acrossAt(lines, f), ...beam })),
  ];
}

const sidesOf = ({ lakeside, hillside }: Lines) => [lakeside, hillside];
const acrossAt = ({ lakeside, hillside }: Lines, f: string) => ({ from: f + lakeside, to: f + hillside });
const alongAt = ({ westmost, eastmost }: Lines, s: string) => ({ from: westmost + s, to: eastmost + s });

/** The gables are boarded: studs at each half bay for the boards, and a brace at each end. */
function studsAndBraces({ across, westmost, eastmost, second }: Lines): InventedMember[] {
  const [stud, brace] = [piecesOf('間柱', 'stud'), piecesOf('筋かい', 'brace')];
  // From beam to beam, as the posts of these lines.
  const upper = { level: '2F', base: HEIGHTS.upperFoot, top: HEIGHTS.upperPostWithin, place: UP } as const;
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
function kneeBraces({ slip, eastmost, lakeside }: Lines, wall: number): InventedMember[] {
  const knee = piecesOf('方杖', 'knee');
  const middle = `又${slip}${lakeside}`;
  const lie = (from: string) =>
    ({
      from,
      to: middle,
      level: '1F',
      base: wall - 700,
      top: wall,
      place: DOWN,
    }) as const;
  return [slip, eastmost].map((f) => knee(`${f}${lakeside}方杖`, lie(f + lakeside)));
}

/** Across each corner in plan, half a bay each way, at the eaves and under the loft floor where there is one. */
function angles(
  { westmost, eastmost, lakeside, hillside, slip, second }: Lines,
  hasLoft: boolean,
): InventedMember[] {
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
    const under = { ...lie, level: '2F', base: HEIGHTS.floorBeam, place: DOWN } as const;
    return [
      ...(hasLoft ? [angle(`${f}${s}火打`, under)] : []),
      angle(`小屋 ${f}${s}火打`, { ...lie, level: '軒', base: HEIGHTS.plate, place: '小屋' }),
    ];
  });
}
