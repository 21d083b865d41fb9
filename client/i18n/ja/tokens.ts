import type { TranslationOf } from '../catalog.ts';
import type { tokens as english } from '../en/tokens.ts';

export const tokens = {
  title: 'アクセストークン',
  lead: 'フォルダーから写真を送るなど、スクリプトがあなたの名前で操作するための鍵です。あなたにできる操作は、すべてできます。',
  none: 'トークンはまだありません',
  noneText: 'スクリプトを使うときだけ必要です。',
  list: 'トークンの一覧',
  name: '用途',
  created: '作成',
  used: '最終使用',
  expires: '期限',
  never: 'なし',
  action: '操作',
  newName: '新しいトークンの用途',
  lasting: '使える期間',
  lastingChoice: { month: '30日', year: '1年', always: '無効にするまで' },
  submit: 'トークンを作る',
  secretTitle: '「{{name}}」の秘密の文字列です。今しか表示されません。',
  secretText: 'スクリプトが読む場所にコピーしてください。「Authorization: Bearer …」として送ります。',
  secret: '秘密の文字列',
  end: '無効にする',
  endNamed: 'トークン「{{name}}」を無効にする',
  endTitle: 'トークン「{{name}}」を無効にしますか？',
  endText: 'これを使うスクリプトはすぐに止まります。元には戻せません。',
  nameMissing: '用途を入れてください。',
} as const satisfies TranslationOf<typeof english>;
