import type { TranslationOf } from '../catalog.ts';
import type { schedule as english } from '../en/schedule.ts';

export const schedule = {
  title: '部材表を取り込む',
  lead: '一行に部材を一本ずつ書いた、CSV か XLSX の表です。保存する前に、何が変わるかを確認できます。',
  choose: '部材の表を選ぶ',
  chooseOther: '別の表を選ぶ',
  chooseHint: 'CSV か XLSX、10 MB まで。必要なのは番付の列だけです。',
  reading: '表を読んでいます…',
  found_other: '{{file}} には、見出しの下に{{count, number}}行あります。{{encoding}} として読みました。',
  columns: {
    title: '列の意味',
    lead: '見出しから判断しました。違うところを直してください。',
    list: '表の列',
    header: '見出し',
    meaning: '意味',
    sample: '初めの値',
    meaningOf: '「{{header}}」の列の意味',
    unnamed: '{{number}}列目',
    kept: '見出しの名前のまま残す',
    noMark: '番付の列がありません。どれか一つを「番付」にしてください。',
  },
  field: {
    mark: '番付',
    kind: '種類',
    name: '名前',
    place: '場所',
    track: '通る段階',
    note: '備考',
  },
  problems: {
    title_other: '表の中に直すところが{{count, number}}件',
    line: '行',
    column: '列',
    value: '値',
    reason: '理由',
    skip: 'この行を除いて、残りを取り込む',
    skipHint: 'または、ファイルを直して選び直してください。',
  },
  reason: {
    'mark-missing': '番付がありません。',
    'mark-too-long': '番付が60文字を超えています。',
    'mark-control-character': '番付に見えない文字が入っています。',
    'mark-repeated': '同じ番付が{{line}}行目にあります。',
    'value-too-long': '文字が長すぎます。',
    'unknown-track':
      '通る段階が分かりません。壁（wall）、軸組（timber）、床組（floor）、小舞（lath）のどれかを書いてください。',
  },
  missing: {
    title: '表にない部材',
    question: 'その扱い',
    keep: 'そのままにする',
    retire: '取りやめにする（この表が部材表のすべて）',
    none: '部材表の部材はすべて表にあります。取りやめになるものはありません。',
    warning_other: 'この建物の部材{{all, number}}本のうち、{{count, number}}本が取りやめになります。',
    onlyWhole:
      '取りやめた部材は、隠蔽前の確認表から外れます。表に建物全体の部材が入っているときだけ行ってください。一部だけの表なら「そのままにする」を選んでください。',
    list: '取りやめになる部材',
    tagged_other: 'そのうち{{count, number}}本には写真への記入があります。履歴は残ります。',
    hidden_other:
      'そのうち{{count, number}}本はふさぎ工事に入っています。取りやめると、その工事で記録を求められなくなります。',
  },
  nothing: {
    noRows:
      '表に見出しはありますが、その下に行がありません。部材の入ったファイルを選ぶか、部材のシートを先頭にして保存してください。',
    noMark: 'まだ取り込めません。どの列が番付か、上で指定してください。',
    allBad_other:
      '{{count, number}}行のどれも取り込めません。上の理由を見てファイルを直し、選び直してください。どの行も同じ理由なら、まず列の意味が合っているか確かめてください。',
    restKnown_other:
      '読める行に新しい内容はなく、{{count, number}}行は取り込めません。その行をファイルで直し、選び直してください。',
    allKnown: '新しい内容がありません。取り込むものはありません。',
  },
  outcome: {
    title: '取り込むとどうなるか',
    added_other: '追加 {{count, number}}本',
    changed_other: '変更 {{count, number}}本',
    retired_other: '取りやめ {{count, number}}本',
    unchanged_other: '変わらない部材 {{count, number}}本',
    andMore_other: 'ほか{{count, number}}件',
    returns: '復帰',
    change: '{{field}}：{{before}} → {{after}}',
    emptyValue: '（空）',
  },
  agree: 'このとおりに取り込む',
  agreeHint: 'ここに示したとおりの内容が、台帳の一項目として取り込まれます。',
  cannot: {
    badRows: '上の行を直すか、除くことに同意してください。',
  },
  changedMeanwhile: '確認の後に部材表が変わりました。作り直した内容を見て、もう一度同意してください。',
  done: '取り込みました（{{added}}、{{changed}}、{{retired}}）。',
  doneNothing: '新しい内容がなかったので、何も取り込んでいません。',
  doneBad_other: '{{count, number}}行を除きました。',
  toMembers: '部材の一覧へ',
  another: '別の表を取り込む',
  unreadableFile: 'ブラウザーがファイルを読めませんでした。選び直してください。',
} as const satisfies TranslationOf<typeof english>;
