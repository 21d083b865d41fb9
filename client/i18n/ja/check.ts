import type { TranslationOf } from '../catalog.ts';
import type { check as english } from '../en/check.ts';

export const check = {
  title: '記録一式を確かめる',
  lead: '建物の記録一式のファイル、またはそれを展開したフォルダーを選んでください。読み取るのはこの端末の中だけで、どこにも送られません。',
  chooseZip: '記録一式のファイル（ZIP）',
  chooseFolder: 'または、展開したフォルダー',
  drop: 'どちらも、ここに落としても選べます。',
  checking: '確認中',
  progress: '{{all}}のうち{{read}}',
  yes: 'この記録一式に誤りはありません。',
  no: 'この記録一式には誤りがあります。最初に見つかったもの：',
  house: '建物',
  madeAt: '作成日時',
  entries: '台帳の項目',
  originals: '元のファイル',
  originalsOf: '{{count, number}}件、{{bytes}}',
  records: '有効な記入',
  releases: '「ふさいでよい」の確認',
  head: '最上位ハッシュ',
  count: '{{count, number}}件',
  back_other:
    '前の項目より時刻の早い項目が{{count, number}}件あります（最初は{{line, number}}行目）。時計が戻されたか、サーバーごとに時計が違ったものです。',
  compare:
    '最初の項目からすべて書き直された記録一式も、それ自体では食い違いがありません。確認の書面や工事日誌など、別の場所に控えた最上位ハッシュと比べてください。',
  paper: {
    title: '控えておいた最上位ハッシュと比べる',
    lead: '確認の書面、工事日誌、台帳の画面にある値です。',
    size: '項目の数',
    head: '最上位ハッシュ',
    release: '確認の番号（書かれているとき）',
    unusable: '最上位ハッシュは0～9とa～fの64桁で、項目の数と組になっています。',
    same_other: '控えのとおりの記録一式です。最初の{{count, number}}項目までの最上位ハッシュが一致しました。',
    included: '確認 {{release}} は、その最上位ハッシュに含まれています。',
    rests:
      '確認 {{release}} はこの中にあり、その最上位ハッシュまでの記録に基づいています。確認の項目そのものは、その後にあります。',
  },
  place: {
    line: '{{file}} の{{line, number}}行目',
    byte: '{{file}} の{{byte, number}}バイト目',
    lineAndByte: '{{file}} の{{line, number}}行目、{{byte, number}}バイト目',
  },
  wrong: {
    'not-an-archive': '建物の記録一式ではないか、途中で切れています（{{reason}}）。',
    'file-missing': 'このファイルがありません。',
    'file-extra': 'このファイルは記録一式のものではありません。',
    'file-twice': '同じ名前のファイルが二つあります。',
    'file-unreadable':
      'このファイルが読み取れません。記録一式が壊れているか、途中で切れています（{{reason}}）。',
    'not-utf8': 'UTF-8の文字列ではありません。',
    'not-json': 'JSONではありません。',
    'not-canonical': '正規のJSON（RFC 8785）で許されるただ一つの書き方になっていません。',
    'manifest-form': '「{{field}}」がないか、使えない値です。',
    'manifest-newer':
      '「{{field}}」が {{found}} となっていますが、このプログラムでは分かりません。新しいもので確かめてください。',
    'manifest-checksum': '検査合計が合いません。このファイルは書き換えられています。',
    'manifest-house': '建物 {{found}} とありますが、台帳は {{expected}} のものです。',
    'manifest-size': '項目は{{found}}件とありますが、台帳には{{expected}}件あります。',
    'manifest-head': '最上位ハッシュは {{found}} とありますが、台帳からは {{expected}} になります。',
    'manifest-original': '元のファイル {{sha256}} について書かれていることが、台帳と合いません。',
    'line-form': 'この行は、項目とそのハッシュ、最上位ハッシュの組になっていません。',
    'line-too-long': 'この行は、項目としてあり得ない長さです。',
    'line-cut': '最後の行に終わりがありません。途中で切れたか、書き換えられています。',
    'entry-form': 'この項目に「{{field}}」がないか、使えない値です。',
    'entry-place': 'この項目の番号は{{found}}ですが、ここには{{expected}}があるはずです。',
    'entry-house': 'この項目は建物 {{found}} のものですが、最初の項目は {{expected}} のものです。',
    'entry-kind':
      '「{{kind}}」の第{{version}}版とありますが、このプログラムでは分かりません。新しいもので確かめてください。',
    'entry-leaf':
      '項目のハッシュは {{found}} とありますが、実際は {{expected}} です。どちらかが書き換えられています。',
    'entry-head':
      'この項目までの最上位ハッシュは {{found}} とありますが、実際は {{expected}} です。この行か、それより前の行が書き換えられています。',
    'release-covering': 'ふさぎ工事 {{covering}} の確認ですが、その予定は前にありません。',
    'release-unknown': '確認 {{release}} を取り消していますが、その確認は前にありません。',
    'release-size': 'この確認は{{found}}項目に基づくとありますが、前にあるのは{{expected}}項目だけです。',
    'release-head':
      'この確認は最上位ハッシュ {{found}} に基づくとありますが、最初の{{size}}項目では {{expected}} です。',
    'release-not-included': 'この確認が最後の最上位ハッシュに含まれることを証明できません。',
    'release-inconsistent':
      'この確認が基づく最上位ハッシュが、この台帳の前の状態であることを証明できません。',
    'release-tag': 'この確認は記入 {{tag}} に基づくとありますが、その記入は前にありません。',
    'stamp-head':
      'タイムスタンプは最初の{{size}}項目の最上位ハッシュ {{found}} に対するものですが、この台帳では {{expected}} です。',
    'table-hash': '{{file}} のハッシュは {{expected}} とありますが、実際は {{found}} です。',
    'table-row': '{{row}}行目が、台帳から導かれる内容と違います。',
    'page-hash':
      'ハッシュは {{found}} ですが、manifest.json には {{expected}} とあります。書き換えられています。',
    'original-length':
      '{{found}}バイトありますが、台帳では{{expected}}バイトです。書き換えられたか、途中で切れています。',
    'original-hash': 'ハッシュは {{found}} ですが、台帳では {{expected}} です。書き換えられています。',
    'paper-size': '控えでは{{found}}項目ですが、この台帳には{{expected}}項目しかありません。',
    'paper-head':
      '控えでは最初の{{size}}項目までの最上位ハッシュは {{found}} ですが、この記録一式では {{expected}} です。過去が書き換えられたか、別の建物の控えです。',
    'paper-release': '控えにある確認 {{release}} が、この記録一式にはありません。',
  },
} as const satisfies TranslationOf<typeof english>;
