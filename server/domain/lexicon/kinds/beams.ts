import { OVER_POSTS, kindsOf, type Usual } from '../kind-rows.ts';

const BEAM: Usual = {
  family: 'beam',
  track: 'timber',
  lies: 'level',
  section: [120, 240],
  hiddenBy: ['plaster-over-posts', 'ceiling'],
};
const PLATE: Usual = { ...BEAM, family: 'plate', section: [120, 180], hiddenBy: OVER_POSTS };
const LOFT = { section: [180, 300], hiddenBy: ['ceiling'] } as const;

/** What lies on posts and carries floors and roofs. */
export const BEAMS = [
  ...kindsOf(BEAM, [
    ['梁', 'はり', 'hari', 'beam', 'tie beam'],
    ['大梁', 'おおばり', 'ōbari', 'main beam', 'summer beam|girder', { section: [120, 300] }],
    ['小梁', 'こばり', 'kobari', 'secondary beam', '', { section: [105, 180] }],
    ['床梁', 'ゆかばり', 'yukabari', 'upper floor beam', '二階梁', { hiddenBy: ['floor', 'ceiling'] }],
    [
      '胴差',
      'どうさし',
      'dōsashi',
      'girt',
      '胴差し|どうざし|girding beam',
      { track: 'wall', hiddenBy: OVER_POSTS },
    ],
    ['小屋梁', 'こやばり', 'koyabari', 'roof beam', '', { section: [120, 240], hiddenBy: ['ceiling'] }],
    ['牛梁', 'うしばり', 'ushibari', 'ox beam', '牛曳き梁|牛引梁', LOFT],
    ['敷梁', 'しきばり', 'shikibari', 'bearing beam', '', LOFT],
    ['投掛梁', 'なげかけばり', 'nagekakebari', 'lapped roof beam', '投げ掛け梁', LOFT],
    ['丸太梁', 'まるたばり', 'marutabari', 'log beam', '', LOFT],
    ['太鼓梁', 'たいこばり', 'taikobari', 'two-faced log beam', '太鼓落とし', LOFT],
    [
      '登り梁',
      'のぼりばり',
      'noboribari',
      'sloping beam',
      '登梁',
      { lies: 'sloping', hiddenBy: ['roof-boards', 'ceiling'] },
    ],
    ['妻梁', 'つまばり', 'tsumabari', 'gable beam', 'end girt', { hiddenBy: OVER_POSTS }],
    ['繋ぎ梁', 'つなぎばり', 'tsunagibari', 'connecting beam', 'つなぎ梁|繋梁'],
    ['飛び梁', 'とびばり', 'tobibari', 'flying beam', '飛梁', { hiddenBy: ['ceiling'] }],
    ['虹梁', 'こうりょう', 'kōryō', 'rainbow beam', '', { section: [180, 360], hiddenBy: [] }],
    [
      'ブレサマー',
      'ブレサマー',
      'buresamā',
      'bressummer',
      'ブレッサマー|breastsummer',
      { section: [180, 300] },
    ],
    [
      'ドラゴンビーム',
      'ドラゴンビーム',
      'doragonbīmu',
      'dragon beam',
      '',
      { hiddenBy: ['floor', 'ceiling'] },
    ],
  ]),
  ...kindsOf(PLATE, [
    ['桁', 'けた', 'keta', 'wall plate', '軒桁|のきげた|plate|eaves beam|top plate'],
    ['妻桁', 'つまげた', 'tsumageta', 'gable plate'],
    ['敷桁', 'しきげた', 'shikigeta', 'bearing plate'],
    ['出桁', 'だしげた', 'dashigeta', 'outrigger plate', '出し桁|でげた', { hiddenBy: [] }],
    ['丸桁', 'がぎょう', 'gagyō', 'eaves purlin', 'がんぎょう', { section: [150, 180], hiddenBy: [] }],
    ['頭つなぎ', 'あたまつなぎ', 'atamatsunagi', 'double top plate', '頭繋ぎ', { section: [105, 45] }],
  ]),
];
