import { IN_WALL, OVER_POSTS, kindsOf, type Usual } from '../kind-rows.ts';

const POST: Usual = {
  family: 'post',
  track: 'wall',
  lies: 'upright',
  section: [120, 120],
  hiddenBy: OVER_POSTS,
};
const SILL: Usual = { ...POST, family: 'sill', track: 'timber', lies: 'level' };

/** What stands, and what it stands on. */
export const POSTS = [
  ...kindsOf(POST, [
    ['柱', 'はしら', 'hashira', 'post', 'column'],
    ['通し柱', 'とおしばしら', 'tōshibashira', 'through post', '通柱'],
    ['管柱', 'くだばしら', 'kudabashira', 'single-storey post', 'single-story post'],
    ['隅柱', 'すみばしら', 'sumibashira', 'corner post', '角柱'],
    ['大黒柱', 'だいこくばしら', 'daikokubashira', 'main post', 'central post', { section: [240, 240] }],
    ['恵比寿柱', 'えびすばしら', 'ebisubashira', 'second main post', 'えびす柱', { section: [210, 210] }],
    ['棟持柱', 'むなもちばしら', 'munamochibashira', 'ridge post', '棟持ち柱', { section: [240, 240] }],
    ['床柱', 'とこばしら', 'tokobashira', 'alcove post', '', { hiddenBy: [] }],
    ['半柱', 'はんばしら', 'hanbashira', 'half post', '半割柱', { section: [60, 120] }],
    ['間柱', 'まばしら', 'mabashira', 'stud', '', { section: [45, 105], hiddenBy: IN_WALL }],
    ['添え柱', 'そえばしら', 'soebashira', 'sister post', '添柱|添え木'],
    ['付け柱', 'つけばしら', 'tsukebashira', 'applied post', '付柱|false post', { section: [45, 105] }],
    ['控え柱', 'ひかえばしら', 'hikaebashira', 'buttress post', '控柱', { track: 'timber', hiddenBy: [] }],
  ]),
  ...kindsOf(SILL, [
    ['土台', 'どだい', 'dodai', 'sill', 'sill beam|sill plate|ground sill|sole plate'],
    ['地覆', 'じふく', 'jifuku', 'ground rail'],
    [
      '足固め',
      'あしがため',
      'ashigatame',
      'foot tie beam',
      '足固',
      { section: [120, 180], hiddenBy: ['floor'] },
    ],
    [
      '火打土台',
      'ひうちどだい',
      'hiuchidodai',
      'sill angle brace',
      '',
      { section: [45, 90], hiddenBy: ['floor'] },
    ],
    [
      '束石',
      'つかいし',
      'tsukaishi',
      'strut stone',
      'pad stone',
      { lies: 'none', section: null, hiddenBy: ['floor'] },
    ],
    [
      '礎石',
      'そせき',
      'soseki',
      'base stone',
      '柱石|石場建て石',
      { lies: 'none', section: null, hiddenBy: [] },
    ],
  ]),
];
