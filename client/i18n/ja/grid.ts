import type { grid as english } from '../en/grid.ts';
import type { TranslationOf } from '../catalog.ts';

export const grid = {
  title: '通り芯',
  lead: '番付のもとになる通りと階の高さです。これを決めると部材表が軸組になり、部材に位置がつき、ふさぎ工事を範囲で指定して、隠れる部材を計算できます。',
  unit: '単位のない数字は',
  unitOf: { mm: 'ミリメートル', shaku: '尺（303.03 mm）', inch: 'インチ' },
  first: {
    title: '番付で先に書く通り',
    hint: '「い三」なら「い」。いろは順に右から左へ振ることが多い方です。',
  },
  second: {
    title: '番付で後に書く通り',
    hint: '「い三」なら「三」。数字で、図面の上から下へ振ることが多い方です。',
  },
  labels: '通りの名前（順に）',
  labelsHint: '間を空けて書きます。例：い ろ は に',
  series: 'よく使う名前',
  seriesOf: { iroha: 'い ろ は …', kanji: '一 二 三 …', digits: '1 2 3 …', letters: 'A B C …' },
  count: '通りの数',
  fill: '名前を入れる',
  bays: '通りの間隔',
  baysHint:
    '全部同じなら一つ、違うなら一つずつ書きます。例：1820、または 1820 1820 910。6尺、1間とも書けます。半間の通りは要りません。「又い」は「い」と次の通りの間です。',
  runs: '図面での向き',
  runsOf: { leftward: '右から左', rightward: '左から右', downward: '上から下', upward: '下から上' },
  levels: '階と高さ',
  levelsHint: '一行に一つ、低い方から書きます。例：1F 450。高さは地盤など、決めた基準からです。',
  sketch: '通り芯の平面：{{first}} と {{second}}',
  saved: '通り芯を決めました。部材と範囲の位置も決まりました。',
  toSchedule: '部材表を取り込む',
  wrong: {
    'no-lines': '通りがありません。名前を一つは入れてください。',
    'label-empty': '「{{label}}」は名前になりません。',
    'label-repeated': '「{{label}}」が重なっているか、ほかと同じに読めます（3と三など）。',
    'label-unreadable': '「{{label}}」は別の意味に読めてしまいます。ほかの名前にしてください。',
    'not-ascending': '「{{label}}」が前のものより先の位置にありません。',
    'bay-too-short': '「{{label}}」：間隔は0より長くしてください。',
    'not-a-length': '「{{label}}」の長さが読めません。1820、6尺、1.82 m のように書いてください。',
    count: '間隔は全部同じなら一つ、違うなら{{label}}個書いてください。',
  },
} as const satisfies TranslationOf<typeof english>;
