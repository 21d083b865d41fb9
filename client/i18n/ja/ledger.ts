import type { TranslationOf } from '../catalog.ts';
import type { ledger as english } from '../en/ledger.ts';

export const ledger = {
  title: '台帳',
  lead: 'この建物について入力されたことのすべてが、順に載っています。書き換えも削除もありません。各項目は、それより前のすべての項目とつながっています。',
  head_other: '全{{count, number}}項目のハッシュ木（Merkle木）の最上位ハッシュ',
  headHint: '工事日誌など別の場所に書き写してください。過去が変えられると、この値が変わります。',
  archive: {
    title: '記録一式',
    lead: '台帳とすべての元のファイル、サーバーなしで開けるページを一つのファイルにまとめたものです。どこででも確かめ、復元できます。そのページを保証するものはないので、承認の内容は、確かめたときに台帳から表示されるものを読んでください。',
    size_other:
      '台帳と元のファイル{{count, number}}件でおよそ{{bytes}}。ほかに、読むためと確かめるためのページが0.5MB以上あります。',
    download: '記録一式をダウンロード',
    check: '記録一式を確かめる',
    caution:
      '元のファイルには、位置や製造番号など、カメラが書き込んだものがすべて残っています。すべてを見てよい人にだけ渡してください。',
  },
  stamp: {
    last_other:
      '{{count, number}}項目までの最上位ハッシュに、{{by}}のタイムスタンプが{{when}}付けで付いています。',
    none: 'タイムスタンプはまだありません。1日に1回求めます。',
    hint: 'タイムスタンプ（RFC 3161）は、この値がその時点にあったことを外部の機関が証明するものです。台帳に残り、このサーバーがなくても確かめられます。',
    trouble: '前回（{{when}}）はタイムスタンプを得られませんでした。{{reason}}1時間ごとに求め直します。',
    troubleOf: {
      silent: '認証局から応答がありません。',
      rejected: '認証局に断られました。',
      unreadable: '応答を読み取れません。',
      'another-head': '応答は別の値に対するものでした。',
      'another-request': '応答は別の要求に対するものでした。',
      'bad-signature': '署名が正しくありません。',
      untrusted: '認証局の証明書が、ここで信頼するルート証明書につながりません。',
    },
  },
  list: '項目（新しい順）',
  entry: '項目 {{number, number}}',
  content: '内容とハッシュ',
  kind: '種別',
  version: '第{{version}}版',
  leaf: 'この項目のハッシュ（葉）',
  headAfter: 'この項目までの最上位ハッシュ',
  payload: '内容',
  older: '前の項目を表示',
  none: '項目はまだありません',
  unknown: 'この版のプログラムでは文にできない項目です（{{kind}}）。',
  aCovering: 'ふさぎ工事',
  theProgram: '運用している人',
  noDay: '日付未定',
  firstDay: '現場の初日 {{day}}',
  noFirstDay: '現場の初日なし',
  site: '現場の位置 {{where}}',
  noSite: '現場の位置なし',
  noKind: '種類未入力',
  ofMarks: '{{what}}（{{marks}}）',
  reason: '{{sentence}}理由：{{reason}}',
  say: {
    house: {
      created: '建物「{{name}}」の記録を始めた：時間帯 {{zone}}、{{day}}、{{where}}。',
      changed: '建物概要を変えた：「{{name}}」、時間帯 {{zone}}、{{day}}、{{where}}。',
    },
    grid: { stated: '通り芯を決めた（{{first}}、{{second}}。階 {{levels}}）。' },
    requirements: { stated_other: 'ふさぎ工事に必要な記録を決めた（独自の定め{{count}}件）。' },
    head: {
      stamped_other: '全{{count, number}}項目の最上位ハッシュに、{{by}}のタイムスタンプが付いた：{{when}}。',
    },
    role: {
      granted: '{{person}}さんに「{{role}}」の役割を与えた。',
      withdrawn: '{{person}}さんの役割を外した。',
    },
    guest: {
      admitted: '{{label}}のために、{{what}}の閲覧リンクを作った（期限 {{when}}）。',
      ended: '閲覧リンクを無効にした。',
    },
    password: {
      'link-made': '{{person}}さんがパスワードを作り直すためのリンクを作った（期限 {{when}}）。',
      renewed: '{{by}}さんの作ったリンクで、{{person}}さんがパスワードを作り直した。',
    },
    schedule: {
      imported:
        '部材表 {{file}} を取り込んだ：追加 {{added}}本、変更 {{changed}}本、取りやめ {{retired}}本、取り込まなかった行 {{badRows}}行。',
    },
    member: {
      entered: '部材 {{mark}}（{{kind}}）を登録した。',
      retired: '部材 {{mark}} を取りやめた。',
      removed: '部材 {{mark}} を消した（記入もふさぎ工事もなかった）。',
    },
    photo: {
      added: '写真 {{file}} を追加した。',
      dated: '写真の撮影日時を人が入力した：{{when}}、{{span}}。',
      'dating-withdrawn': '人が入力した写真の撮影日時を取り消した。',
    },
    clock: {
      marked: '{{camera}} の時計を照合した：カメラの時計は {{clock}}、正しい時刻は {{when}}。',
      withdrawn: '{{camera}} の時計の照合を取り消した。',
    },
    tag: {
      placed: '写真に {{mark}} を「{{stage}}」と記入した。',
      superseded: '{{was}} の記入を改め、{{mark}} を「{{stage}}」とした。',
      part: '{{sentence}}写っているのは{{from}}〜{{to}}。',
      withdrawn: '{{mark}} の記入を取り消した。',
    },
    covering: {
      inZone: '範囲内の部材',
      withZone: '{{listed}}と範囲内の部材',
      planned: 'ふさぎ工事「{{name}}」（{{kind}}）を予定した：ふさぐ日 {{day}}、隠れるのは{{hidden}}。',
      changed: 'ふさぎ工事「{{name}}」（{{kind}}）を変えた：ふさぐ日 {{day}}、隠れるのは{{hidden}}。',
      closed: '「{{name}}」をふさぎ済みにした：{{when}}。',
      reopened: '「{{name}}」のふさぎ済みを取り消した。',
    },
    findings: {
      answered: '{{marks}} の記入への疑義に答えた。',
      accepted_other: '要確認 {{count, number}}件を認めた：{{what}}。',
    },
    finding: { reopened: '認めたことを取り消した：{{what}}。' },
    term: {
      entered: '種類「{{name}}」を登録した。段階：{{track}}。',
      renamed: 'この建物での種類「{{was}}」を「{{name}}」に変えた。段階：{{track}}。',
      removed: '建物独自の用語「{{name}}」を消した。',
    },
    note: { written: '{{day}}の覚え書きを書いた。' },
  },
} as const satisfies TranslationOf<typeof english>;
