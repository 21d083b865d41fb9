import { kindsOf, type Usual } from '../kind-rows.ts';

const FLOOR: Usual = {
  family: 'floor',
  track: 'floor',
  lies: 'level',
  section: [45, 60],
  hiddenBy: ['floor'],
};
const EDGE = { section: [120, 120], hiddenBy: [] } as const;
const CEILING: Usual = {
  family: 'ceiling',
  track: 'timber',
  lies: 'level',
  section: [36, 45],
  hiddenBy: ['ceiling'],
};
const BOARD = { lies: 'none', section: null, hiddenBy: [] } as const;

/** What lies below one's feet, and what hangs above one's head. */
export const FLOORS = [
  ...kindsOf(FLOOR, [
    ['大引', 'おおびき', 'ōbiki', 'floor beam', 'oobiki|大引き|sleeper', { section: [105, 105] }],
    ['根太', 'ねだ', 'neda', 'joist', 'floor joist'],
    ['際根太', 'きわねだ', 'kiwaneda', 'edge joist'],
    ['根太掛け', 'ねだかけ', 'nedakake', 'joist ledger', '根太掛', { section: [45, 90] }],
    ['大引受け', 'おおびきうけ', 'ōbikiuke', 'floor beam ledger', '大引受', { section: [45, 90] }],
    ['床束', 'ゆかづか', 'yukazuka', 'floor post', '', { lies: 'upright', section: [105, 105] }],
    [
      '根がらみ',
      'ねがらみ',
      'negarami',
      'floor post tie',
      '根絡み|根がらみ貫|根絡み貫',
      { section: [15, 90] },
    ],
    ['転び止め', 'ころびどめ', 'korobidome', 'blocking', '転止め|solid bridging'],
    ['荒床', 'あらゆか', 'arayuka', 'subfloor', '下地床|subfloor board', { lies: 'none', section: null }],
    ['床板', 'ゆかいた', 'yukaita', 'floor board', 'floorboard', BOARD],
    ['上がり框', 'あがりがまち', 'agarigamachi', 'entrance floor edge', '上り框|あがりかまち', EDGE],
    ['縁框', 'えんがまち', 'engamachi', 'veranda edge beam', '', EDGE],
  ]),
  ...kindsOf(CEILING, [
    ['野縁', 'のぶち', 'nobuchi', 'ceiling joist', 'ceiling batten'],
    ['野縁受け', 'のぶちうけ', 'nobuchiuke', 'ceiling joist carrier', '野縁受'],
    ['吊り木', 'つりぎ', 'tsurigi', 'ceiling hanger', '吊木|釣木', { lies: 'upright', section: [36, 45] }],
    ['吊り木受け', 'つりぎうけ', 'tsurigiuke', 'hanger bearer', '吊木受', { section: [75, 75] }],
    ['竿縁', 'さおぶち', 'saobuchi', 'exposed ceiling batten', '棹縁', { section: [30, 36], hiddenBy: [] }],
    [
      '廻り縁',
      'まわりぶち',
      'mawaribuchi',
      'ceiling edge trim',
      '回り縁|廻縁',
      { section: [36, 45], hiddenBy: [] },
    ],
    ['天井板', 'てんじょういた', 'tenjōita', 'ceiling board', '', BOARD],
  ]),
];
