import { IN_WALL, OVER_POSTS, kindsOf, type Usual } from '../kind-rows.ts';

const OPENING: Usual = {
  family: 'opening',
  track: 'wall',
  lies: 'level',
  section: [105, 45],
  hiddenBy: IN_WALL,
};
const SEEN = { hiddenBy: [] } as const;

/**
 * Sizes and spacing of bamboo lath that counts: MoC Notification 1100 (1981, as amended by MLIT 1543 of
 * 2003): carriers split ≥ 20 mm or round ≥ 12 mm, lath split ≥ 20 mm at ≤ 45 mm.
 */
const LATH: Usual = {
  family: 'lath',
  track: 'lath',
  lies: 'none',
  section: null,
  hiddenBy: IN_WALL,
};
const FACE = { hiddenBy: OVER_POSTS } as const;

/** What frames openings, and what plaster holds on to. */
export const WALLS = [
  ...kindsOf(OPENING, [
    ['まぐさ', 'まぐさ', 'magusa', 'lintel', '楣|目草|header', { section: [105, 105] }],
    ['窓台', 'まどだい', 'madodai', 'window sill', 'rough sill'],
    [
      '差鴨居',
      'さしがもい',
      'sashigamoi',
      'load-bearing head',
      '差し鴨居|指鴨居',
      { section: [120, 270], ...FACE },
    ],
    ['鴨居', 'かもい', 'kamoi', 'grooved head', 'かも居', SEEN],
    ['敷居', 'しきい', 'shikii', 'grooved sill', 'threshold', SEEN],
    ['無目', 'むめ', 'mume', 'plain rail', '無目鴨居', SEEN],
    ['方立', 'ほうだて', 'hōdate', 'jamb', 'door jamb', { lies: 'upright', section: [45, 105] }],
    [
      '吊束',
      'つりづか',
      'tsurizuka',
      'hanging strut',
      '吊り束|釣束',
      { lies: 'upright', section: [105, 105], ...FACE },
    ],
    ['窓枠', 'まどわく', 'madowaku', 'window frame', '', SEEN],
  ]),
  ...kindsOf(LATH, [
    ['小舞', 'こまい', 'komai', 'lath', '木舞|小舞竹|竹小舞|たけこまい|bamboo lath|wattle'],
    ['間渡し竹', 'まわたしだけ', 'mawatashidake', 'lath carrier', 'mawatashi|間渡し|まわたし|間渡竹'],
    ['小舞縄', 'こまいなわ', 'komainawa', 'lath rope', '木舞縄|lath cord'],
    ['貫伏せ', 'ぬきぶせ', 'nukibuse', 'rail cover strip', '貫伏|布伏せ'],
    ['下げ苧', 'さげお', 'sageo', 'plaster tie', '下苧|とんぼ|plaster whisker'],
    ['木摺', 'きずり', 'kizuri', 'wood lath', '木ずり|木摺り'],
    ['ラス網', 'らすあみ', 'rasuami', 'metal lath', 'ラス|メタルラス|expanded metal', FACE],
    ['ラスボード', 'ラスボード', 'rasubōdo', 'plaster lath board', '石膏ラスボード|gypsum lath'],
    [
      '構造用面材',
      'こうぞうようめんざい',
      'kōzōyōmenzai',
      'structural sheathing',
      '耐力面材|構造用合板|plywood',
      FACE,
    ],
    ['落とし板', 'おとしいた', 'otoshiita', 'plank infill', '落とし込み板|落し板'],
  ]),
];
