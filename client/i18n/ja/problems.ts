import type { TranslationOf } from '../catalog.ts';
import type { problems as english } from '../en/problems.ts';

export const problems = {
  offline: 'サーバーから返事がありません。通信を確かめて、もう一度試してください。',
  offlineKept:
    'サーバーから返事がありません。通信を確かめて、もう一度試してください。入力した内容は残っています。',
  unexpected: 'このブラウザーの中で不具合が起きました。ページを読み込み直してください。',
  fields: '該当する項目：{{fields}}。',
  field: {
    name: '名前',
    zone: '時間帯',
    space: '範囲の通りまたは高さ',
    firstDay: '現場の初日',
    site: '現場の位置',
    email: 'メールアドレス',
    password: 'パスワード',
    role: '役割',
    mark: '番付',
    kind: '種類',
    place: '場所',
    track: '通る段階',
    note: '覚え書き',
    text: '文章',
    other: 'その他の列',
    plannedDay: 'ふさぐ予定日',
    closedAt: 'ふさいだ時刻',
    hides: '隠れる部材',
    least: '必要な段階',
    stage: '段階',
    region: '写真の範囲',
    reason: '理由',
    day: '日付',
    mapping: '列の意味',
    fileName: 'ファイル名',
  },
  unstated: {
    spelling: 'この言葉',
    other: 'ほかの種類',
    file: 'このファイル',
    found: '別のもの',
    limit: '上限',
    marks: '一部の番付',
    mark: 'この部材',
    stage: 'この段階',
    zone: 'この時間帯',
    email: 'このアドレス',
    covering: 'このふさぎ工事',
    seconds: '数十',
    megapixels: '多すぎる',
  },
  code: {
    'invalid-request': '入力に合わないところがあります。見直してから、もう一度送ってください。',
    'invalid-json': '送信が途中で崩れました。ページを読み込み直して、もう一度行ってください。',
    'not-signed-in': 'サインインが切れています。サインインしてから、もう一度行ってください。',
    'wrong-credentials': 'メールアドレスとパスワードが合いません。両方を確かめてください。',
    'present-password-wrong': '今のパスワードではありません。サインインに使うものを入れてください。',
    'cross-site-request':
      '別のサイトからの送信なので断りました。このページを元のアドレスから開いてください。',
    'not-permitted': 'この建物でのあなたの役割ではできません。記録の責任者に頼んでください。',
    'password-link-not-yours':
      'このリンクは、あなたが責任者の建物だけに関わる人にしか作れません。ほかの人の分は、運用している人に頼んでください。',
    'not-found': '見つからないか、担当していない建物のものです。',
    'method-not-allowed': 'このアドレスではできない操作です。ページを読み込み直してください。',
    'id-used-for-something-else':
      '以前に別の内容で保存されています。ページを読み込み直して、変更をやり直してください。',
    'email-in-use': '{{email}} のアカウントはもうあります。それでサインインしてください。',
    'tag-withdrawn': '{{mark}} の記入はその間に取り消されました。写真を見直して、新しく記入してください。',
    'tag-superseded': '{{mark}} の記入はその間に誰かが改めました。新しい記入を見てから変更してください。',
    'covering-closed':
      '「{{covering}}」はふさぎ済みなので変更できません。先にふさぎ済みを取り消してください。',
    'covering-not-closed': '「{{covering}}」はふさぎ済みではないので、取り消すものがありません。',
    'not-released':
      '「{{covering}}」には有効な検査の承認がありません。検査を受けるか、承認なしにふさぐ理由を入力してください。',
    'released-for-less':
      '承認の後、「{{covering}}」で隠れる {{marks}} の範囲が広がったか、記録が減っています。検査を受け直すか、承認なしにふさぐ理由を入力してください。',
    'not-ready': '「{{covering}}」は検査待ちではありません。まだ検査を頼んでいないか、取り下げられました。',
    'already-released': '「{{covering}}」は承認済みです。先に承認を取り消してください。',
    'evidence-changed': '見ていただいた後に {{marks}} の記録が変わりました。もう一度見てください。',
    'not-reviewed': 'まだ見ていない部材があります：{{marks}}。',
    'not-waived': '{{marks}} の記録がありません。理由を添えて認めるか、差し戻してください。',
    'not-hidden': '「{{covering}}」は {{marks}} を隠しません。',
    'four-eyes':
      '{{marks}} を記録したのはあなただけです。「{{covering}}」は別の人が承認してください。この決まりは、記録の責任者が建物概要で変えられます。',
    'doubt-of-own-tag':
      '{{marks}} の記入はあなたがしたものです。疑義には別の人が答えるか、もっとよい写真に記入し直してください。',
    'doubt-under-release':
      '{{marks}} の記入は承認のもとになっていて、答えると承認がまた有効になります。承認した人、疑義を出した人、または別の検査員が答えるか、検査を依頼し直してください。',
    'ready-by-oneself': '「{{covering}}」の検査を依頼したのはあなたです。別の人が承認してください。',
    'release-withdrawn': 'この承認はすでに取り消されています。',
    'tag-not-standing': '{{mark}} の記入は、改められたか取り消されました。今有効な記入を見てください。',
    'protection-lifted': 'もう別の日時に外したことになっています。先にそれを取り消してください。',
    'protection-not-lifted': '外していないので、取り消すものがありません。',
    'protection-withdrawn': 'この養生は入力の誤りとして取り消されました。改めて入力してください。',
    'protection-time-impossible':
      '養生の日時が正しくありません。これまでの日時で、外した日時は掛けた日時より後にしてください。',
    'schedule-changed-since-preview':
      '確認の後に部材表が変わりました。新しい確認の内容を見て、もう一度同意してください。',
    'finding-changed': 'ご覧になった内容から変わっています。もう一度確認し、今の内容について答えてください。',
    'last-owner': '建物には記録の責任者が必要です。先にほかの人を責任者にしてください。',
    'link-used-or-expired': 'このリンクは使用済みか期限切れです。新しいリンクを頼んでください。',
    'file-too-large': '{{file}} は {{limit}} MB を超えています。小さいファイルを送ってください。',
    'request-too-large': '一度に受け取れる量を超えています。分けて送ってください。',
    'unsupported-media-type': 'この種類のファイルは読めません。ここに挙げた種類のファイルを選んでください。',
    'unknown-zone': '{{zone}} という時間帯はありません。一覧から選んでください（例 Asia/Tokyo）。',
    'unknown-marks': '{{marks}} は部材表にありません。先に部材を登録するか、番付を直してください。',
    'grid-impossible': '通り芯になりません。線の名前は重ならず、位置は順に大きくなるようにしてください。',
    'zone-without-grid': '通り芯がまだ決まっていません。先に通り芯を入力するか、部材を一覧で選んでください。',
    'zone-impossible':
      'この範囲は通り芯の中の空間になりません。ある通りを選び、上端を下端より高くしてください。',
    'unknown-kinds': '用語集にない種類が含まれています。用語集にある種類を選んでください。',
    'stage-outside-track':
      '{{mark}} には、ここで「{{stage}}」の記録を求められません。通る段階で、まだ見えるものを選んでください。',
    'term-spelling-taken':
      '「{{spelling}}」はすでに {{other}} を指しています。別の言葉にするか、そちらを変更してください。',
    'term-without-name': '日本語か英語の名前を入れてください。',
    'closing-in-the-future':
      'ふさいだ日時が、これから先の日時になっています。実際にふさいだ日時を入れてください。',
    'clock-mark-without-camera':
      '{{file}} にはカメラの名がないので、ほかの写真の時刻を直せません。この写真の日時は人が入力してください。',
    'clock-mark-without-time':
      '{{file}} にはカメラの時計の時刻がありません。時刻を書き込むカメラで時計を撮ってください。',
    'time-in-the-future': '撮影日時が、これから先の日時になっています。日付と時刻を直してください。',
    'photo-has-a-time':
      '{{file}} には撮影日時があり、矛盾もありません。カメラの時計が狂っていたときは、時計の照合で直してください。',
    'photo-not-dated-by-hand': '{{file}} の日時は人が入力したものではないので、取り消すものがありません。',
    'schedule-unreadable':
      '{{file}} を部材表として読めません。CSV（UTF-8）か XLSX で保存して、選び直してください。',
    'schedule-has-bad-rows':
      '取り込めない行があります。ファイルを直すか、その行を除くことに同意してください。',
    'schedule-has-no-mark-column': '番付の列が見つかりません。どの列が番付か、下で指定してください。',
    'no-photo-in-request': '写真が届いていません。一枚以上選んでください。',
    'photo-empty': '{{file}} は空です。カメラからもう一度取り込んでください。',
    'photo-not-an-image': '{{file}} は写真ではありません（{{found}}）。写真そのものを選んでください。',
    'photo-type-not-supported':
      '{{file}} は保存できない種類です（{{found}}）。JPEG・PNG・TIFF・WebP・HEIC・AVIF のどれかにしてください。',
    'photo-too-many-pixels':
      '{{file}} は {{megapixels}} メガピクセルあり、上限の {{limit}} を超えています。小さい画像を送ってください。',
    'photo-damaged': '{{file}} は壊れていて開けません。カメラからもう一度取り込んでください。',
    'photo-interrupted': '{{file}} は途中までしか届いていません。もう一度送ってください。',
    'picture-not-ready': '小さい画像を作っている途中です。少し待ってください。',
    'crop-outside-image': '囲みが画像の外に出ています。囲み直してください。',
    'too-many-attempts': '短い間に試した回数が多すぎます。{{seconds}}秒待ってからもう一度試してください。',
    'original-missing':
      '「{{file}}」の元のファイルがサーバーにないか、壊れています。運用している人に知らせ、バックアップから戻してもらってください。',
    'internal-error':
      'サーバーで不具合が起きました。この操作は何も保存されていません。もう一度試し、続くときは運用している人に知らせてください。',
    'storage-full':
      'サーバーの空きがありません。運用している人に知らせてください。この操作は保存されていません。',
  },
} as const satisfies TranslationOf<typeof english>;
