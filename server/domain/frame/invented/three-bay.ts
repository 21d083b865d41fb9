import {
  dayAfter,
  type InventedCovering,
  type InventedHouse,
  type InventedMember,
} from './invented-house.ts';
import { flat, gridOf, membersOf, ROOF, slope, wall, withMiddles } from './parts.ts';

const FIRST = 'いろはに';
const SECOND = '一二三';
const LEVELS = { '1F': 450, 軒: 3250 };
const LEVEL = '1F';
/** Above the floor: rails at foot, waist and head. */
const RAILS = { 地貫: 200, 腰貫: 1000, 内法貫: 1850 };
const EAVES = 2800;
/** Four sun of fall in ten: 728 mm over a bay. */
const RISE = 728;

/** One storey, three bays by two, with a ridge over the middle line. */
export function threeBayHouse(firstDay: string): InventedHouse {
  return {
    ...{ name: '三間の納屋', firstDay },
    grid: gridOf(FIRST, SECOND, LEVELS),
    members: [...frame(), ...floor(), ...roof()],
    coverings: coverings(firstDay),
    days: [
      { day: firstDay, text: '建方。柱と桁まで。' },
      { day: dayAfter(firstDay, 6), text: '貫を通し、楔を打つ。' },
    ],
  };
}

function frame(): InventedMember[] {
  const post = membersOf('柱', [120, 120]);
  const sill = membersOf('土台', [120, 120]);
  const plate = membersOf('桁', [120, 180]);
  const beam = membersOf('梁', [120, 240]);
  const brace = membersOf('筋かい', [45, 90]);
  return [
    ...[...FIRST].flatMap((f) => [...SECOND].map((s) => post(f + s, { from: f + s, level: LEVEL }))),
    ...runs().flatMap(({ line, from, to }) => [
      sill(`${line}通り土台`, { from, to, level: LEVEL, base: -60 }),
      ...Object.entries(RAILS).map(([kind, base]) =>
        membersOf(kind, [15, 105])(`${line}通り${kind}`, { from, to, level: LEVEL, base }),
      ),
    ]),
    ...['一', '三'].map((s) =>
      plate(`${s}通り桁`, { from: `い${s}`, to: `に${s}`, level: LEVEL, base: EAVES }),
    ),
    ...[...FIRST].map((f) => beam(`${f}通り梁`, { from: `${f}一`, to: `${f}三`, level: LEVEL, base: EAVES })),
    brace('い一筋かい', { from: 'い一', to: 'い二', level: LEVEL, base: 0, top: EAVES }),
    brace('に三筋かい', { from: 'に三', to: 'に二', level: LEVEL, base: 0, top: EAVES }),
  ];
}

/** The lines that walls stand on, each through the whole house. */
function runs(): { line: string; from: string; to: string }[] {
  return [
    ...['い', 'に'].map((line) => ({ line, from: `${line}一`, to: `${line}三` })),
    ...[...SECOND].map((line) => ({ line, from: `い${line}`, to: `に${line}` })),
  ];
}

function floor(): InventedMember[] {
  const bearer = membersOf('大引', [105, 105]);
  const joist = membersOf('根太', [45, 60]);
  const batten = membersOf('野縁', [36, 45]);
  return [
    ...['又一', '又二'].map((s) =>
      bearer(`${s}大引`, { from: `い${s}`, to: `に${s}`, level: LEVEL, base: -100 }),
    ),
    ...withMiddles(FIRST).map((f) =>
      joist(`${f}根太`, { from: `${f}一`, to: `${f}三`, level: LEVEL, base: -30 }),
    ),
    ...withMiddles(SECOND).map((s) =>
      batten(`${s}野縁`, { from: `い${s}`, to: `ろ${s}`, level: LEVEL, base: 2450 }),
    ),
  ];
}

function roof(): InventedMember[] {
  const ridge = membersOf('棟木', [120, 150]);
  const purlin = membersOf('母屋', [105, 105]);
  const rafter = membersOf('垂木', [45, 60]);
  const lies = { level: '軒', place: ROOF };
  // A purlin's axis lies 60 mm below that of the rafters on it.
  const under = (rise: number) => rise - 60;
  return [
    ridge('棟木', { ...lies, from: 'い二', to: 'に二', base: under(RISE) }),
    ...['又一', '又二'].map((s) =>
      purlin(`${s}母屋`, { ...lies, from: `い${s}`, to: `に${s}`, base: under(RISE / 2) }),
    ),
    ...withMiddles(FIRST).flatMap((f) =>
      ['一', '三'].map((s) =>
        rafter(`${f}${s}垂木`, { ...lies, from: `${f}${s}`, to: `${f}二`, base: 0, top: RISE }),
      ),
    ),
  ];
}

function coverings(firstDay: string): InventedCovering[] {
  const plaster = (name: string, days: number, zone: InventedCovering['zone']): InventedCovering => ({
    ...{ name, kind: 'plaster', plannedDay: dayAfter(firstDay, days), zone },
  });
  const BETWEEN = [450, 3250] as const;
  const OVER = [330, 3400] as const;
  const slopeOf = (eaves: string) =>
    slope({
      ...{ family: 'second', eaves, ridge: '二', from: 'い', to: 'に' },
      ...{ eavesHeight: 3300, ridgeHeight: 3300 + RISE, below: 150 },
    });
  const floorZone = flat({ corners: ['い一', 'に三'], bottom: 250, top: 470 });
  const ceilingZone = flat({ corners: ['い一', 'ろ三'], bottom: 2850, top: 3400 });
  const day = (days: number) => dayAfter(firstDay, days);
  return [
    { name: '北の屋根', kind: 'roof-boards', plannedDay: day(10), zone: slopeOf('一') },
    { name: '南の屋根', kind: 'roof-boards', plannedDay: day(11), zone: slopeOf('三') },
    plaster('西の壁', 20, wall('between-posts', 'first', ['い', '一', '三'], BETWEEN)),
    plaster('東の壁', 21, wall('over-posts', 'first', ['に', '一', '三'], OVER)),
    plaster('北の壁', 22, wall('between-posts', 'second', ['一', 'い', 'ろ'], BETWEEN)),
    plaster('南の壁', 23, wall('over-posts', 'second', ['三', 'い', 'に'], OVER)),
    { name: '床', kind: 'floor', plannedDay: day(30), zone: floorZone },
    { name: '西の間の天井', kind: 'ceiling', plannedDay: day(35), zone: ceilingZone },
  ];
}
