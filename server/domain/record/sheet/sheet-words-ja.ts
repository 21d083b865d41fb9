import type { SheetWords } from './sheet-words.ts';

export const SHEET_WORDS_JA: SheetWords = {
  title: (covering) => `承認書：${covering}`,
  withdrawn: ({ who, when, reason }) =>
    `この承認は取り消されています。${when}、${who}が取り消しました。理由：${reason}`,
  ended: ({ who, when }) =>
    `この承認はもう有効ではありません。承認の後に状態が変わったため、${when}、${who}が検査を依頼し直しました。`,
  notForAll: ({ marks, when }) =>
    `${when}現在、この承認は${marks.join('、')}には及びません。隠れる範囲や記録が変わったため、再検査が必要です。ほかの部材については有効です。`,
  fact: {
    house: '建物',
    covering: 'ふさぎ工事',
    released: '承認した人',
    keeper: '記録の責任者',
    times: '時刻',
    rule: '二人での確認',
    note: '覚え書き',
    number: '承認の番号',
    entry: '台帳の項目',
    head: 'この項目までの最上位ハッシュ',
  },
  covering: (name, kind) => `${name}（${kind}）`,
  said: ({ who, when }) => `${who}、${when}`,
  person: (name, role) => `${name}（${role}）`,
  role: {
    owner: '記録の責任者',
    carpenter: '大工',
    inspector: '検査員',
    builder: '施工者',
  },
  zone: ({ name, offset }) => `${name}（${offset}）`,
  fourEyes: '自分だけで記録したものや、自分で検査を依頼したものは、自分で承認できない決まりでした。',
  twoEyes: '二人での確認を求めない決まりで、自分だけで記録したものも自分で承認できました。',
  noNote: 'なし',
  entry: (seq, size) => `第${seq + 1}項目。それより前の${size}項目に基づきます。`,
  check:
    'この承認を確かめるには、次のページを開いてください。何を確かめられるか、どうすればよいかが書いてあります。記録一式があれば、上の三つの値と照らし合わせ、台帳にある承認の内容を読めます（記録一式は端末の中で読むだけで、送信しません）。',
  caution:
    'この承認は、この記録の中で承認した人が述べたものです。建築基準法の中間検査・完了検査など、法令で求められる検査の代わりには' +
    'なりません。隠れる前に何を誰が検査すべきかは、法令と有資格者の判断によります。' +
    '「記録あり」は、その部材が健全だという意味ではありません。',
  waived: {
    heading: '記録なしで認めた部材',
    none: '記録なしで認めた部材はありません。',
    lead: (who) => `${who}が、一本ずつ理由を付けて認めました。`,
  },
  refused: {
    heading: '承認より前の差し戻し',
    lead: '前の検査で不備とされたことです。',
    lacks: (mark, note) => (note === '' ? mark : `${mark}：${note}`),
  },
  members: {
    heading: (count) => `隠れる部材（${count}本）`,
    lead: '承認のときに数えた記録を添えます。撮影日時は、今日の時点で求めたものです。',
  },
  state: {
    'on-record': '記録あり',
    waived: '記録なしで認めた',
    'hidden-before': '前の層で隠れた',
  },
  least: (stage, views) => `必要な段階「${stage}」${views > 1 ? `、各部分に写真${views}枚` : ''}`,
  whole: '全長が隠れる',
  hidden: (part) => `隠れる部分は${part}`,
  part: {
    named: (from, to) => `${from}〜${to}`,
    shown: (from, to) => `${from}〜${to}が写っている`,
    fromFoot: (from, to) => `下端から${from}〜${to} m`,
    fromEnd: (from, to) => `端から${from}〜${to} m`,
  },
  missing: (parts) => `記録がない部分：${parts.join('、')}`,
  missingAll: '記録がない部分：全長',
  reason: (reason) => `理由：${reason}`,
  shows: (mark, stage, file) => `${mark}、「${stage}」、写真 ${file}`,
  taken: (when, within) => `撮影 ${when}${within === '' ? '' : `（${within}）`}`,
  undated: '日付なし',
  corrected: 'カメラの時計のずれを補正しています。',
  byHand: (who) => `日時は${who}が入力しました。`,
  within: (seconds) => {
    if (seconds < 120) return `±${Math.round(seconds)}秒`;
    if (seconds < 7200) return `±${Math.round(seconds / 60)}分`;
    return `±${Math.round(seconds / 3600)}時間`;
  },
  stage: (stage) => `写っている段階「${stage}」`,
  taggedBy: ({ who, when }) => `記入 ${who}、${when}`,
  doubt: {
    doubted: ({ who, when, reason }) => `${when}、${who}が疑義「${reason}」`,
    answered: ({ who, when, reason }) => `${when}、${who}が回答「${reason}」`,
    reopened: ({ who, when, reason }) => `${when}、${who}が回答を取り消し「${reason}」`,
  },
  doubts: (said) => `承認の前に疑義あり：${said.join('。')}`,
  later: {
    heading: '承認より後のこと',
    lead: (when) => `${when}現在。承認の記載は当時のままです。今も有効かどうかはここに示します。`,
    stands: '承認',
    standing: '有効です。',
    notFor: (marks) =>
      `有効ですが、${marks.join('、')}には及びません。隠れる範囲や記録が変わったため、再検査が必要です。`,
    closing: 'ふさいだ日時',
    open: 'まだふさいでいません。',
    closedUnder: (when) => `${when}、この承認を受けてふさぎました。`,
    closedElse: (when) => `${when}にふさぎましたが、この承認によるものではありません。`,
    fewer: '承認のときに数えた記録が、今は数えられません。',
    more: '承認の後に、数える記録が増えました。',
    what: {
      'hidden-since': '承認の後に隠れることになりました。この承認には含まれません。',
      'more-hidden': '承認したときより広い部分が隠れます。',
      'hidden-no-more': 'このふさぎ工事では、もう隠れません。',
      records: '数える記録が変わりました。',
    },
    changes: '変更',
    unchanged: '承認のもとになったことは、何も変わっていません。',
    changed: '変わったことを、部材ごとに下に示します。',
    ended: {
      withdrawn: ({ who, when }) => `${when}、${who}が取り消し`,
      superseded: ({ who, when }) => `${when}、${who}が改めた`,
      disputed: ({ who, when, reason }) => `${when}、${who}が疑義「${reason}」`,
    },
    gone: (record) => `数えなくなった記録：${record}`,
    come: (record) => `新しく数える記録：${record}`,
  },
  nobody: 'プログラム',
  and: '、',
};
