import type { Language } from '../../i18n/language.ts';

interface LayerWords {
  /** Of the name of a zone that is seen from the side on which it is open. */
  readonly behind: (closed: string) => string;
  /** Of a member behind a wall whose other face is open; '' for a side beyond which nothing stands. */
  readonly openFrom: (line: string, until: string) => string;
  readonly openOutside: (until: string) => string;
  readonly until: (day: string) => string;
  /** Of a member that an earlier layer has hidden. */
  readonly hiddenBefore: (day: string, covering: string) => string;
  readonly hiddenBeforeCount: (count: string) => string;
  /** So many members without a record, whose other face stays open. */
  readonly left: (count: number) => string;
  readonly otherFaceOpen: string;
  readonly others: string;
  readonly face: Readonly<Record<'lower' | 'higher', string>>;
  readonly next: string;
  readonly where: string;
  readonly place: Readonly<Record<'other-face' | 'on-top' | 'below' | 'same', string>>;
  /** A proposal for its name. */
  readonly name: Readonly<Record<'back-coat' | 'next', (before: string) => string>>;
  readonly over: (before: string) => string;
}

/** Words of layers. Beside the catalogs, so that the first visit does not fetch what few screens say. */
export const LAYER_WORDS: Readonly<Record<Language, LayerWords>> = {
  en: {
    behind: (closed) => `${closed}, on the other face`,
    openFrom: (line, until) => `can still be photographed from the side of ${line}${until}`,
    openOutside: (until) => `can still be photographed from outside${until}`,
    until: (day) => ` until ${day}`,
    hiddenBefore: (day, covering) => `out of sight since ${day}, behind “${covering}”`,
    hiddenBeforeCount: (count) => `${count} hidden before by another layer`,
    left: (count) =>
      count === 1
        ? '1 member has no record yet, and can still be photographed from the other face.'
        : `${count} members have no record yet, and can still be photographed from the other face.`,
    otherFaceOpen: 'the other face is still open',
    others: 'Other layers here',
    face: { lower: 'face to the lines before', higher: 'face to the lines after' },
    next: 'Plan the next layer here',
    where: 'Where the next layer lies',
    place: {
      'other-face': 'on the other face of the wall',
      'on-top': 'on top of it',
      below: 'under it',
      same: 'in the same zone',
    },
    name: {
      'back-coat': (before) => `${before}, back coat`,
      next: (before) => `${before}, next layer`,
    },
    over: (before) => `The zone is that of “${before}”. Check its lines and heights.`,
  },
  ja: {
    behind: (closed) => `${closed}（裏側）`,
    openFrom: (line, until) => `${line}通りの側から${until}撮影できる`,
    openOutside: (until) => `外側から${until}撮影できる`,
    until: (day) => `${day}まで`,
    hiddenBefore: (day, covering) => `${day}に「${covering}」で隠れた`,
    hiddenBeforeCount: (count) => `前の層で隠れたもの ${count}本`,
    left: (count) => `未記録の部材が${count}本ありますが、裏側からまだ撮影できます。`,
    otherFaceOpen: '裏側はまだ開いている',
    others: '同じところのほかの層',
    face: { lower: '前の通り側', higher: '次の通り側' },
    next: '次の層を予定する',
    where: '次の層の位置',
    place: {
      'other-face': '壁の裏側',
      'on-top': 'その上に重ねる',
      below: 'その下に重ねる',
      same: '同じ範囲',
    },
    name: {
      'back-coat': (before) => `${before}・裏返し`,
      next: (before) => `${before}・次の層`,
    },
    over: (before) => `範囲は「${before}」から写しました。通りと高さを確かめてください。`,
  },
};
