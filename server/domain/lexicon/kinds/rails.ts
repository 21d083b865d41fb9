import { IN_WALL, OVER_POSTS, kindsOf, type Usual } from '../kind-rows.ts';

/**
 * 15 × 105 mm is the size sold; the least in MoC Notification 1100 (1981, as amended by MLIT 1543 of 2003)
 * for an earthen wall that counts is 15 × 100 mm.
 */
const RAIL: Usual = {
  family: 'rail',
  track: 'wall',
  lies: 'level',
  section: [15, 105],
  hiddenBy: IN_WALL,
};
const IN_ROOF = { track: 'timber', hiddenBy: ['ceiling'] } as const;
const BRACE: Usual = { ...RAIL, family: 'brace', lies: 'sloping', section: [45, 90] };

/** What ties posts together, and what keeps them from leaning. */
export const RAILS = [
  ...kindsOf(RAIL, [
    ['貫', 'ぬき', 'nuki', 'tie rail', '通し貫|通貫|through-tenon rail|penetrating tie'],
    ['地貫', 'じぬき', 'jinuki', 'foot tie rail'],
    ['腰貫', 'こしぬき', 'koshinuki', 'waist tie rail', '胴貫|どうぬき'],
    ['内法貫', 'うちのりぬき', 'uchinorinuki', 'head tie rail'],
    ['天井貫', 'てんじょうぬき', 'tenjōnuki', 'ceiling tie rail'],
    [
      '足固め貫',
      'あしがためぬき',
      'ashigatamenuki',
      'floor-level tie rail',
      '足固貫',
      { section: [30, 120] },
    ],
    ['飛貫', 'ひぬき', 'hinuki', 'flying tie rail', '', { section: [60, 180], hiddenBy: OVER_POSTS }],
    ['頭貫', 'かしらぬき', 'kashiranuki', 'post-head tie', '', { section: [120, 180], hiddenBy: OVER_POSTS }],
    ['小屋貫', 'こやぬき', 'koyanuki', 'roof strut tie rail', '', { ...IN_ROOF, section: [15, 90] }],
    ['長押', 'なげし', 'nageshi', 'face rail', '長押し', { section: [45, 105], hiddenBy: OVER_POSTS }],
    ['胴つなぎ', 'どうつなぎ', 'dōtsunagi', 'nogging', '胴繋ぎ|noggin|dwang', { section: [45, 105] }],
    ['胴縁', 'どうぶち', 'dōbuchi', 'furring strip', 'batten', { section: [18, 45], hiddenBy: OVER_POSTS }],
  ]),
  ...kindsOf(BRACE, [
    ['筋かい', 'すじかい', 'sujikai', 'brace', '筋交い|筋交|筋違|筋違い|diagonal brace'],
    [
      'たすき掛け筋かい',
      'たすきがけすじかい',
      'tasukigakesujikai',
      'cross brace',
      'たすき筋かい|襷掛け|double brace',
    ],
    ['方杖', 'ほうづえ', 'hōzue', 'knee brace', 'arch brace', { section: [105, 105], hiddenBy: OVER_POSTS }],
    [
      '火打',
      'ひうち',
      'hiuchi',
      'horizontal angle brace',
      '火打ち|火打梁|ひうちばり',
      { track: 'timber', lies: 'level', section: [105, 105], hiddenBy: ['ceiling'] },
    ],
    [
      '小屋筋かい',
      'こやすじかい',
      'koyasujikai',
      'roof brace',
      '小屋筋違|雲筋かい|雲筋違',
      { ...IN_ROOF, section: [15, 90] },
    ],
    [
      '振れ止め',
      'ふれどめ',
      'furedome',
      'sway tie',
      '振止め',
      { ...IN_ROOF, lies: 'level', section: [15, 90] },
    ],
    [
      'ウインドブレース',
      'ウインドブレース',
      'uindoburēsu',
      'wind brace',
      'ウィンドブレース',
      { track: 'timber', section: [45, 180], hiddenBy: ['roof-boards', 'ceiling'] },
    ],
  ]),
];
