import {
  dayAfter,
  type InventedCovering,
  type InventedHouse,
  type InventedMember,
} from './invented-house.ts';
import { flat, gridOf, membersOf, ROOF, slope, wall, withMiddles } from './parts.ts';

const FIRST = 'いろはにほへと';
const SECOND = '一二三四五';
const STOREYS = ['1F', '2F'] as const;
/** Floor to floor and floor to eaves alike. */
const STOREY_MM = 2800;
const LEVELS = { '1F': 450, '2F': 3250, 軒: 6050 };
const RAILS = { 地貫: 200, 腰貫: 1000, 内法貫: 1850 };
/** Half a bay at four sun of fall in ten. */
const HALF_RISE = 364;
/** Purlins by their line, with the half bays between it and the eaves. */
const PURLINS = { 又一: 1, 二: 2, 又二: 3, 又三: 3, 四: 2, 又四: 1 };

/** Two storeys, six bays by four, about four hundred members. */
export function fourHundredHouse(firstDay: string): InventedHouse {
  return {
    ...{ name: '谷の大きな家', firstDay },
    grid: gridOf(FIRST, SECOND, LEVELS),
    members: [...STOREYS.flatMap((level) => storey(level)), ...foot(), ...roof()],
    coverings: coverings(firstDay),
    days: [
      { day: firstDay, text: '建方。一階の柱と胴差。' },
      { day: dayAfter(firstDay, 2), text: '二階の柱、小屋組、棟木まで。' },
      { day: dayAfter(firstDay, 12), text: '一階の貫と楔。' },
    ],
  };
}

/** What each storey has alike: posts, studs, rails, braces, the beams over it, joists and ceiling. */
function storey(level: (typeof STOREYS)[number]): InventedMember[] {
  const lie = (from: string, to: string, base: number) => ({ from, to, level, base });
  const of = (mark: string) => `${level} ${mark}`;
  const post = membersOf('柱', [120, 120]);
  const stud = membersOf('間柱', [45, 105]);
  const joist = membersOf('根太', [45, 60]);
  const batten = membersOf('野縁', [36, 45]);
  const carrier = membersOf('野縁受け', [36, 45]);
  const angle = membersOf('火打', [105, 105]);
  const isUpper = level === '2F';
  return [
    ...crossings().map((mark) => post(of(mark), { from: mark, level })),
    ...studs().map((mark) => stud(of(`${mark}間柱`), { from: mark, level })),
    ...runs().flatMap(({ line, from, to }) =>
      Object.entries(RAILS).map(([kind, base]) =>
        membersOf(kind, [15, 105])(of(`${line}通り${kind}`), lie(from, to, base)),
      ),
    ),
    ...braces(level),
    ...[...FIRST].map((f) =>
      membersOf(isUpper ? '小屋梁' : '床梁', [120, 240])(of(`${f}通り梁`), {
        ...lie(`${f}一`, `${f}五`, STOREY_MM),
        ...(isUpper ? { place: ROOF } : {}),
      }),
    ),
    ...['一', '五'].map((s) =>
      membersOf(isUpper ? '桁' : '胴差', [120, 240])(of(`${s}通り桁`), lie(`い${s}`, `と${s}`, STOREY_MM)),
    ),
    ...withMiddles(FIRST).map((f) => joist(of(`${f}根太`), lie(`${f}一`, `${f}五`, -30))),
    ...[...FIRST].map((f) => carrier(of(`${f}野縁受け`), lie(`${f}一`, `${f}五`, 2490))),
    ...anglePairs().map(([from, to]) => angle(of(`${from}火打`), lie(from, to, STOREY_MM))),
    ...withMiddles(SECOND).map((s) => batten(of(`${s}野縁`), lie(`い${s}`, `と${s}`, 2450))),
  ];
}

function crossings(): string[] {
  return [...FIRST].flatMap((f) => [...SECOND].map((s) => f + s));
}

/** Across each corner in plan, half a bay each way. */
function anglePairs(): (readonly [from: string, to: string])[] {
  return [
    ['い又一', '又い一'],
    ['い又四', '又い五'],
    ['と又一', '又へ一'],
    ['と又四', '又へ五'],
  ];
}

/** Between the posts of the outer walls. */
function studs(): string[] {
  const middles = (labels: string) => withMiddles(labels).filter((label) => label.startsWith('又'));
  return [
    ...['い', 'と'].flatMap((f) => middles(SECOND).map((s) => `${f}${s}`)),
    ...['一', '五'].flatMap((s) => middles(FIRST).map((f) => `${f}${s}`)),
  ];
}

/** The lines that walls and their sills stand on, each through the whole house. */
function runs(): { line: string; from: string; to: string }[] {
  return [
    ...[...FIRST].map((line) => ({ line, from: `${line}一`, to: `${line}五` })),
    ...[...SECOND].map((line) => ({ line, from: `い${line}`, to: `と${line}` })),
  ];
}

/** From each corner up to the next post, both ways. */
function braces(level: string): InventedMember[] {
  const brace = membersOf('筋かい', [45, 90]);
  const ends = [
    ['い一', 'い二'],
    ['い一', 'ろ一'],
    ['い五', 'い四'],
    ['い五', 'ろ五'],
    ['と一', 'と二'],
    ['と一', 'へ一'],
    ['と五', 'と四'],
    ['と五', 'へ五'],
  ] as const;
  return ends.map(([from, to]) =>
    brace(`${level} ${from}${to}筋かい`, { from, to, level, base: 0, top: STOREY_MM }),
  );
}

function foot(): InventedMember[] {
  const sill = membersOf('土台', [120, 120]);
  const bearer = membersOf('大引', [105, 105]);
  const short = membersOf('床束', [105, 105]);
  const level = '1F';
  const middles = ['又一', '又二', '又三', '又四'];
  return [
    ...runs().map(({ line, from, to }) => sill(`${line}通り土台`, { from, to, level, base: -60 })),
    ...middles.map((s) => bearer(`${s}大引`, { from: `い${s}`, to: `と${s}`, level, base: -100 })),
    ...[...FIRST].flatMap((f) =>
      middles.map((s) => short(`${f}${s}床束`, { from: f + s, level, base: -400, top: -150 })),
    ),
  ];
}

function roof(): InventedMember[] {
  const lies = { level: '軒', place: ROOF };
  const strut = membersOf('小屋束', [105, 105]);
  const purlin = membersOf('母屋', [105, 105]);
  const rafter = membersOf('垂木', [45, 60]);
  // A purlin's axis lies 60 mm below that of the rafters on it.
  const axis = (halves: number) => halves * HALF_RISE - 60;
  return [
    membersOf('棟木', [120, 150])('棟木', { from: 'い三', to: 'と三', ...lies, base: axis(4) }),
    ...Object.entries(PURLINS).map(([s, halves]) =>
      purlin(`${s}母屋`, { from: `い${s}`, to: `と${s}`, ...lies, base: axis(halves) }),
    ),
    ...[...FIRST].map((f) =>
      membersOf('小屋貫', [15, 90])(`${f}通り小屋貫`, { from: `${f}二`, to: `${f}四`, ...lies, base: 400 }),
    ),
    ...[...FIRST].map((f) =>
      membersOf('棟束', [105, 105])(`${f}三棟束`, { from: `${f}三`, ...lies, base: 120, top: axis(4) }),
    ),
    ...[...FIRST].flatMap((f) =>
      ['二', '四'].map((s) => strut(`${f}${s}小屋束`, { from: f + s, ...lies, base: 120, top: axis(2) })),
    ),
    ...withMiddles(FIRST).flatMap((f) =>
      ['一', '五'].map((s) =>
        rafter(`${f}${s}垂木`, { from: f + s, to: `${f}三`, ...lies, base: 0, top: 4 * HALF_RISE }),
      ),
    ),
  ];
}

function coverings(firstDay: string): InventedCovering[] {
  const day = (days: number) => dayAfter(firstDay, days);
  const slopeOf = (eaves: string) =>
    slope({
      ...{ family: 'second', eaves, ridge: '三', from: 'い', to: 'と' },
      ...{ eavesHeight: 6100, ridgeHeight: 6100 + 4 * HALF_RISE, below: 150 },
    });
  return [
    { name: '北の屋根', kind: 'roof-boards', plannedDay: day(14), zone: slopeOf('一') },
    { name: '南の屋根', kind: 'roof-boards', plannedDay: day(15), zone: slopeOf('五') },
    ...STOREYS.flatMap((level, i) => [...walls(level, day(30 + 5 * i)), ...levels(level, day(50 + 5 * i))]),
  ];
}

/** Outside over the posts, inside between them. */
function walls(level: (typeof STOREYS)[number], plannedDay: string): InventedCovering[] {
  const foot = LEVELS[level];
  const plaster = (name: string, zone: InventedCovering['zone']): InventedCovering => ({
    ...{ name: `${level} ${name}`, kind: 'plaster', plannedDay, zone },
  });
  // Below, the coat reaches over the sill.
  const outer = [level === '1F' ? foot - 120 : foot, foot + STOREY_MM] as const;
  const inner = [foot, foot + STOREY_MM] as const;
  return [
    plaster('西の外壁', wall('over-posts', 'first', ['い', '一', '五'], outer)),
    plaster('東の外壁', wall('over-posts', 'first', ['と', '一', '五'], outer)),
    plaster('北の外壁', wall('over-posts', 'second', ['一', 'い', 'と'], outer)),
    plaster('南の外壁', wall('over-posts', 'second', ['五', 'い', 'と'], outer)),
    plaster('に通りの壁', wall('between-posts', 'first', ['に', '一', '三'], inner)),
    plaster('三通りの壁', wall('between-posts', 'second', ['三', 'い', 'に'], inner)),
  ];
}

function levels(level: (typeof STOREYS)[number], plannedDay: string): InventedCovering[] {
  const foot = LEVELS[level];
  const corners = ['い一', 'と五'];
  const under = flat({ corners, bottom: foot - 200, top: foot + 20 });
  const over = flat({ corners, bottom: foot + 2400, top: foot + STOREY_MM - 100 });
  return [
    { name: `${level} 床`, kind: 'floor', plannedDay, zone: under },
    { name: `${level} 天井`, kind: 'ceiling', plannedDay, zone: over },
  ];
}
