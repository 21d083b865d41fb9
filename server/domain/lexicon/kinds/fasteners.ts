import { kindsOf, type Usual } from '../kind-rows.ts';

const JOINERY: Usual = {
  family: 'joinery',
  track: 'timber',
  lies: 'none',
  section: null,
  hiddenBy: ['plaster-over-posts', 'ceiling'],
};
const IN_WALL = { hiddenBy: ['plaster-between-posts', 'plaster-over-posts'] } as const;
const METAL: Usual = { ...JOINERY, family: 'fastener', hiddenBy: IN_WALL.hiddenBy };
const ROOF = { hiddenBy: ['roof-boards', 'ceiling'] } as const;

/** What holds joints together: of wood, and of metal. */
export const FASTENERS = [
  ...kindsOf(JOINERY, [
    ['込み栓', 'こみせん', 'komisen', 'peg', '込栓|treenail|draw pin'],
    ['鼻栓', 'はなせん', 'hanasen', 'tenon-end peg', '端栓|tusk peg'],
    ['車知栓', 'しゃちせん', 'shachisen', 'draw key', '車知|鯱栓|しゃち|cotter'],
    [
      '雇い枘',
      'やといほぞ',
      'yatoihozo',
      'spline',
      '雇いほぞ|雇枘|やとい|spline tenon|loose tenon|free tenon',
    ],
    ['楔', 'くさび', 'kusabi', 'wedge', 'クサビ', IN_WALL],
    ['割楔', 'わりくさび', 'warikusabi', 'tenon wedge', '割り楔|foxed wedge'],
    ['太枘', 'だぼ', 'dabo', 'dowel', '駄枘'],
    ['千切り', 'ちぎり', 'chigiri', 'butterfly key', '契り|千切|dovetail key'],
    ['蟻桟', 'ありざん', 'arizan', 'dovetail batten', '吸付桟|sliding dovetail', { hiddenBy: ['floor'] }],
  ]),
  ...kindsOf(METAL, [
    [
      'アンカーボルト',
      'アンカーボルト',
      'ankāboruto',
      'anchor bolt',
      '土台ボルト',
      { hiddenBy: ['plaster-over-posts', 'floor'] },
    ],
    [
      'ホールダウン金物',
      'ほーるだうんかなもの',
      'hōrudaunkanamono',
      'hold-down',
      '引寄せ金物|holdown|hold down bolt',
    ],
    ['羽子板ボルト', 'はごいたぼると', 'hagoitaboruto', 'strap bolt', '羽子板', JOINERY],
    ['短冊金物', 'たんざくかなもの', 'tanzakukanamono', 'strap plate', '短冊', JOINERY],
    ['かど金物', 'かどかなもの', 'kadokanamono', 'corner plate', '角金物|コーナープレート'],
    ['山形プレート', 'やまがたぷれーと', 'yamagatapurēto', 'chevron plate', '山形金物|vp plate'],
    ['筋かいプレート', 'すじかいぷれーと', 'sujikaipurēto', 'brace plate', '筋交いプレート|筋かい金物'],
    [
      'ひねり金物',
      'ひねりかなもの',
      'hinerikanamono',
      'twist strap',
      '捻り金物|あおり止め|hurricane tie',
      ROOF,
    ],
    [
      '火打金物',
      'ひうちかなもの',
      'hiuchikanamono',
      'metal angle brace',
      '鋼製火打',
      { hiddenBy: ['ceiling'] },
    ],
    ['かすがい', 'かすがい', 'kasugai', 'cramp iron', '鎹|dog iron|timber dog', ROOF],
    ['ボルト', 'ボルト', 'boruto', 'bolt', '通しボルト'],
    ['座金', 'ざがね', 'zagane', 'washer', 'ワッシャー'],
    ['釘', 'くぎ', 'kugi', 'nail', '和釘|丸釘'],
    ['ビス', 'ビス', 'bisu', 'screw', '木ねじ|構造用ビス|wood screw'],
  ]),
];
