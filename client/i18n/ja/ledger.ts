import type { TranslationOf } from '../catalog.ts';
import type { ledger as english } from '../en/ledger.ts';

export const ledger = {
  title: '台帳',
  lead: 'この建物について記されたことのすべてです。書き換えも削除もなく、各項目はハッシュで前の項目につながっています。',
  head: '{{count, number}}項目の木の頂のハッシュ',
  headHint: '工事日誌など別の場所に書き写してください。過去が変えられると、この値が変わります。',
  list: '項目（新しい順）',
  entry: '第{{seq}}項',
  content: '内容とハッシュ',
  kind: '種別',
  version: '第{{version}}版',
  leaf: '葉のハッシュ',
  headAfter: 'この項までの頂',
  payload: '内容',
  older: '前の項目を表示',
  none: '項目はまだありません',
  unknown: 'この版のプログラムでは言葉にできない記載です（{{kind}}）。',
  aCovering: '隠蔽工事',
  noDay: '日付未定',
  noKind: '種類未記入',
  reason: '{{sentence}}理由：{{reason}}',
  say: {
    house: {
      created: '建物「{{name}}」の記録を始めた。',
      changed: '建物の事項を変えた：「{{name}}」、時間帯 {{zone}}。',
    },
    role: {
      granted: '{{person}}に「{{role}}」の役割を渡した。',
      withdrawn: '{{person}}の役割を外した。',
    },
    schedule: {
      imported:
        '部材表 {{file}} を取り込んだ：追加 {{added}}、変更 {{changed}}、除外 {{retired}}、読まなかった行 {{badRows}}。',
    },
    member: {
      entered: '部材 {{mark}}（{{kind}}）を登録した。',
      retired: '部材 {{mark}} を除外した。',
      removed: '何も結び付いていない部材 {{mark}} を消した。',
    },
    photo: { added: '写真 {{file}} を加えた。' },
    tag: {
      placed: '写真に {{mark}} を「{{stage}}」と記入した。',
      superseded: '{{was}} の記入を改め、{{mark}} を「{{stage}}」とした。',
      withdrawn: '{{mark}} の記入を取り消した。',
    },
    covering: {
      planned: '隠蔽工事「{{name}}」（{{kind}}）を予定した：{{day}}、隠れるのは{{hidden}}。',
      changed: '隠蔽工事「{{name}}」（{{kind}}）を変えた：{{day}}、隠れるのは{{hidden}}。',
      closed: '「{{name}}」を{{when}}にふさいだと記した。',
      reopened: '「{{name}}」をふさいだという記載を取り消した。',
    },
    note: { written: '{{day}}の覚え書きを書いた。' },
  },
} as const satisfies TranslationOf<typeof english>;
