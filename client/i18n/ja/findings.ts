import { FINDING_NAMES } from '#domain/record/findings/names';
import type { TranslationOf } from '../catalog.ts';
import type { findings as english } from '../en/findings.ts';

export const findings = {
  title: '要確認',
  lead: '食い違うもの、確かめられないものの一覧です。黙って直すことはありません。誤りは直し、そのままでよいものは名前と理由を添えて認めてください。どちらも記録に残ります。',
  none: '該当するものはありません',
  noneText_other:
    'この画面の{{count, number}}項目の確認では、未解決のものは見つかりませんでした（{{checks}}）。',
  noneBeyond: '撮影や記入のないものは、この確認では分かりません。現物を見てください。',
  noneAccepted: '認めたものはまだありません',
  noneAcceptedText: '認めたものは、名前と理由とともにここに載ります。',
  open: '未確認（{{count, number}}件）',
  accepted: '認めたもの（{{count, number}}件）',
  states: '表示するもの',
  kinds: '種類で絞る',
  everyKind: 'すべての種類',
  ofKind: '{{kind}}（{{count, number}}件）',
  more: 'さらに表示',
  stops: 'それまで、この記入は記録に数えません。',
  about: '写真と記入',
  photoUndated: '日付なし：{{file}}',
  tag: '{{mark}}：{{stage}}',
  moreTags_other: 'ほか記入{{count, number}}件',
  moreMarks_other: 'ほか{{count, number}}本',
  wasAccepted: '{{who}}さんが{{when}}に認めた：{{reason}}',
  wasAcceptedBefore:
    '{{who}}さんが{{when}}に認めました（{{reason}}）が、その後、もとになる事柄が変わりました。',
  accept: '認める…',
  acceptNamed: '認める：{{what}}',
  acceptAll_other: 'この{{count, number}}件をまとめて認める…',
  takeBack: '認めたことを取り消す',
  takeBackNamed: '認めたことを取り消す：{{what}}',
  reopen: {
    title: '認めたことを取り消しますか',
    text: '認めたことは理由とともに記録に残り、もう一度確認するものになります。',
    stops:
      '認めたことは理由とともに記録に残り、もう一度確認するものになります。それまで、この記入は記録に数えません。',
  },
  dialog: {
    title_other: '{{count, number}}件を認めますか',
    text: '{{name}}さんが確認し、このままでよいと認めたことが記録に残ります。もとになる事柄が変われば、もう一度ここに出ます。',
    more_other: 'ほか{{count, number}}件',
    counts: '認めると、この記入はふたたび記録に数えます。',
    reason: '理由',
    needReason: 'このままでよい理由を書いてください。',
    submit: '自分の名前で認める',
  },
  doubt: {
    wasAccepted: '{{who}}さんが{{when}}に答えた：{{reason}}',
    wasAcceptedBefore:
      '{{who}}さんが{{when}}に答えました（{{reason}}）が、その後あらためて疑義が出されました。',
    accept: '疑義に答える…',
    acceptNamed: '疑義に答える：{{what}}',
    acceptAll_other: 'この{{count, number}}件にまとめて答える…',
    takeBack: '答えを取り消す',
    takeBackNamed: '答えを取り消す：{{what}}',
    own: 'この記入はあなたがしたものです。疑義には別の人が答えるか、もっとよい写真に記入し直してください。',
    dialog: {
      title_other: '{{count, number}}件の疑義に答えますか',
      text: '{{name}}さんが確認し、記入が正しいと答えたことが、理由とともに記録に残ります。',
      reason: '記入が正しい理由',
      submit: '自分の名前で答える',
    },
  },
  here: 'この写真について確認すること',
  hereMember: '食い違うもの',
  toAll: '要確認の一覧',
  waiting_other: '要確認 {{count, number}}件',
  kind: FINDING_NAMES.ja,
  say: {
    'stage-goes-back': '{{mark}} が、後の写真で前の段階になっています。記入か日付のどれかが誤りです。',
    'stages-at-once': '一枚の写真で {{mark}} が{{stages}}になっています。正しいのは一つだけです。',
    'places-at-once':
      '{{mark}} が、一分以内に{{distance, number}} m 離れた場所で撮られた写真に写っています。',
    'stage-outside-track': '{{mark}} が「{{stage}}」と記入されていますが、部材表では通らない段階です。',
    'same-picture': {
      two: 'この二枚はほとんど同じ画像ですが、一枚は{{first}}、もう一枚は{{second}}のものです。',
      one: 'この二枚はほとんど同じ画像ですが、日付があるのは一枚だけです（{{first}}）。',
      unknown: 'この二枚はほとんど同じ画像ですが、時刻が違います。',
    },
    'off-site': '現場から{{distance, number}} m（±{{error, number}} m）離れて撮影されています。',
    'readers-differ': 'ファイルを二通りに読むと、値が食い違います。',
    'clock-disagrees': {
      'gps-disagrees': 'カメラの時計と、ファイルの衛星の時刻が合いません。',
      'camera-not-in-house-zone': 'カメラは建物の時間帯に合わせてありませんでした。',
    },
    'time-unsure': {
      'ambiguous-hour': '時計を戻した夜なので、この時刻は二度ありました。',
      'skipped-hour': '時計を進めた夜なので、この時刻はありませんでした。',
      'zone-not-read':
        '熱画像カメラが時間帯を独自の記録に書いており、読み取れません。建物の時間帯として読みました。',
      'clock-set-between-marks':
        '二つの時計の照合の間にカメラの時計が直されていて、いつかは分かりません。{{within}}ずれているかもしれません。',
    },
    'before-first-day': '写真の日付（{{taken}}）が現場の初日（{{first}}）より前です。',
    'after-upload': '写真の日付（{{taken}}）が取り込みより後です。',
    'no-date': {
      none: 'ファイルに使える時刻がありません。',
      'implausible-year': 'ファイルの時刻は、あり得ない年のものです（時計を合わせていないカメラなど）。',
    },
    unreadable: '{{mark}} は囲みの中で読み取れません：{{why}}。',
    'unknown-mark': '{{mark}} と記入されていますが、部材表にありません。',
    'shown-after-closing': '「{{name}}」をふさいだ後（{{closed}}）の写真に {{mark}} が写っています。',
    disputed: '{{by}}さんが{{when}}に {{mark}} の記入に疑義を出しています（{{why}}）。',
    'closed-without-release': {
      said: '「{{name}}」は、検査の承認なしにふさがれました（理由：{{why}}）。',
      unsaid: '「{{name}}」は、検査の承認なしに、理由もなくふさがれました。',
    },
    'release-taken-back':
      '「{{name}}」をふさいだときの承認は、{{by}}さんが{{when}}に取り消しました（{{why}}）。',
    'closed-with-gaps_other': '「{{name}}」は、{{count, number}}本の記録がないままふさがれました。',
  },
  why: {
    'too-small': '小さすぎる',
    blurred: 'ぼけている',
    'too-dark': '暗すぎる',
    'too-bright': '明るすぎる',
  },
  span: { seconds: '{{count, number}}秒', minutes: '{{count, number}}分', hours: '{{count, number}}時間' },
  todo: {
    disputed:
      '記入を改めるか取り消すか、よりよい写真に記入してください。記入が正しければ、理由を書いて認めてください。',
    'release-taken-back':
      '代わりに何を確かめ、どうするかを、名前を添えて書いてください。ふさいだところを開けるなら、ふさぎ済みを取り消してください。',
    'closed-without-release':
      'いきさつと、代わりに何を確かめたかを、名前を添えて書いてください。誤ってふさぎ済みにしたなら、取り消してください。',
    'stage-goes-back': '写真を順に見比べ、誤った記入を改めるか、カメラの時計を合わせてください。',
    'stages-at-once': '誤った記入を改めるか、取り消してください。',
    'places-at-once': '両方の写真を見てください。記入か位置のどちらかが誤りです。',
    'stage-outside-track': '記入を改めるか、部材表の「通る段階」を直してください。',
    'same-picture':
      '片方は保存し直した写しかもしれません。時刻の正しいほうに記入し、もう一方の記入は取り消してください。',
    'off-site':
      'この建物の写真なら、どこで撮ったかを書いて認めてください。現場の位置が誤りなら、建物概要で直してください。',
    'readers-differ': '正しいと分かる値を採り、理由を書いて認めてください。',
    'clock-disagrees':
      'そのカメラで時計を撮り、正しい時刻を入力する（時計の照合）か、わけが分かるなら認めてください。',
    'time-unsure': 'このまま認めるか、時計の照合を追加してください。',
    'before-first-day': '時計の照合をするか、名前を添えて日付を入れるか、建物概要で初日を直してください。',
    'after-upload': '時計の照合をするか、名前を添えて日付を入れてください。',
    'no-date': 'いつ撮ったか分かるなら、写真の画面で名前を添えて日付を入れてください。',
    unreadable: '近くから、または明るくして撮り直してください。読み取れるなら認めてください。',
    'unknown-mark': '部材を登録するか、記入を正しい番付に改めてください。',
    'shown-after-closing':
      'ふさぎ済みにするのが早すぎたか、開け直したか、記入の誤りです。直すか、認めてください。',
    'closed-with-gaps':
      'これらの部材は記録のないまま隠れました。写真があれば追加して記入し、なければ名前を添えて認めてください。',
  },
  way: {
    settings: '建物概要',
    cameras: '時計の照合',
    members: '部材を登録する',
    covering: 'ふさぎ工事へ',
    member: '部材へ',
  },
} as const satisfies TranslationOf<typeof english>;
