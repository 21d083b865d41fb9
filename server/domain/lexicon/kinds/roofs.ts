import { kindsOf, type Usual } from '../kind-rows.ts';

const ROOF: Usual = {
  family: 'roof',
  track: 'timber',
  lies: 'level',
  section: [105, 105],
  hiddenBy: ['roof-boards', 'ceiling'],
};
const RAFTER = { ...ROOF, lies: 'sloping', section: [45, 60] } as const;
const SEEN = { hiddenBy: [] } as const;
const TRUSS: Usual = { ...ROOF, family: 'truss', section: [120, 120], hiddenBy: ['ceiling'] };
const FALL = { lies: 'sloping' } as const;
const UP = { lies: 'upright' } as const;

/** What carries the roof: the Japanese frame of struts and purlins, eaves, and trusses. */
export const ROOFS = [
  ...kindsOf(ROOF, [
    ['小屋束', 'こやづか', 'koyazuka', 'roof strut', 'strut|purlin post', { ...UP, hiddenBy: ['ceiling'] }],
    ['棟束', 'むなづか', 'munazuka', 'ridge strut', '', { ...UP, hiddenBy: ['ceiling'] }],
    ['母屋', 'もや', 'moya', 'purlin', 'もや桁'],
    ['鼻母屋', 'はなもや', 'hanamoya', 'eaves end purlin'],
    ['棟木', 'むなぎ', 'munagi', 'ridge beam', 'ridge|ridge pole|ridge purlin', { section: [120, 150] }],
    ['隅木', 'すみぎ', 'sumigi', 'hip rafter', '角木', { ...FALL, section: [105, 150] }],
    ['谷木', 'たにぎ', 'tanigi', 'valley rafter', '', { ...FALL, section: [105, 150] }],
  ]),
  ...kindsOf(RAFTER, [
    ['垂木', 'たるき', 'taruki', 'rafter', '棰|椽|common rafter'],
    ['化粧垂木', 'けしょうだるき', 'keshōdaruki', 'exposed rafter', '', { hiddenBy: ['roof-boards'] }],
    ['野垂木', 'のだるき', 'nodaruki', 'hidden rafter'],
    ['配付垂木', 'はいつけだるき', 'haitsukedaruki', 'jack rafter', '配付け垂木'],
    ['桔木', 'はねぎ', 'hanegi', 'eaves lever', '', { section: [180, 240] }],
    [
      '垂木掛け',
      'たるきかけ',
      'tarukikake',
      'rafter ledger',
      '垂木掛',
      { lies: 'level', section: [45, 105] },
    ],
    [
      '広小舞',
      'ひろこまい',
      'hirokomai',
      'eaves batten',
      '',
      { lies: 'level', section: [24, 105], hiddenBy: ['roof-boards'] },
    ],
    ['面戸板', 'めんどいた', 'mendoita', 'rafter gap board', '', { lies: 'level', section: [18, 90] }],
    [
      '鼻隠し',
      'はなかくし',
      'hanakakushi',
      'fascia',
      '鼻隠|鼻かくし',
      { ...SEEN, lies: 'level', section: [24, 180] },
    ],
    ['破風板', 'はふいた', 'hafuita', 'bargeboard', '破風|verge board', { ...SEEN, section: [30, 210] }],
    [
      '野地板',
      'のじいた',
      'nojiita',
      'roof board',
      '野地|roof sheathing',
      { ...SEEN, lies: 'none', section: null },
    ],
    ['瓦桟', 'かわらざん', 'kawarazan', 'tile batten', '瓦棧', { ...SEEN, lies: 'level', section: [18, 24] }],
  ]),
  ...kindsOf(TRUSS, [
    ['陸梁', 'ろくばり', 'rokubari', 'truss tie beam', 'りくばり', { section: [120, 210] }],
    ['真束', 'しんづか', 'shinzuka', 'king post', '', UP],
    ['対束', 'ついづか', 'tsuizuka', 'queen post', '', UP],
    ['合掌', 'がっしょう', 'gasshō', 'principal rafter', '合掌梁', { ...FALL, section: [120, 150] }],
    [
      '二重梁',
      'にじゅうばり',
      'nijūbari',
      'collar beam',
      'collar|collar tie|straining beam',
      { section: [120, 180] },
    ],
    ['挟み束', 'はさみづか', 'hasamizuka', 'clasping strut', '挟束|はさみ束', { ...UP, section: [45, 105] }],
    ['扠首', 'さす', 'sasu', 'thatch principal', '叉首', { ...FALL, section: null }],
    ['屋中', 'やなか', 'yanaka', 'thatch purlin', '家中竹', { section: null }],
    ['クラウンポスト', 'クラウンポスト', 'kuraunposuto', 'crown post', '', UP],
    ['ハンマービーム', 'ハンマービーム', 'hanmābīmu', 'hammer beam', '', { ...SEEN, section: [180, 240] }],
    ['クラック', 'クラック', 'kurakku', 'cruck', 'cruck blade', { ...FALL, section: [180, 300] }],
  ]),
];
