import type { TranslationOf } from '../catalog.ts';
import type { guest as english } from '../en/guest.ts';

export const guest = {
  forWhom: '{{label}}（期限：{{when}}）',
  deadTitle: 'このリンクは使えません',
  dead: '期限が過ぎたか、無効になったか、アドレスの一部が欠けています。渡してくれた人に、新しいリンクを頼んでください。',
  house: '建物',
  kind: '種別',
  closing: 'ふさぐ日',
  noDay: '日付未定',
  plannedFor: '{{day}}の予定',
  closedAt: '{{when}}にふさいだ',
  counts_other: '{{count, number}}本のうち{{onRecord, number}}本は記録あり',
  takenBack: '承認は{{when}}に取り消されました。理由：{{reason}}',
  accepted: {
    now: '検査する人が{{when}}に認めました（{{reason}}）。',
    before: '検査する人が{{when}}に認めました（{{reason}}）が、その承認は後に取り消されました。',
  },
  lost: 'すでに隠れており、必要な状態を示す写真はありません。',
  waived_other: '記録なしで認めたもの{{count, number}}本',
  hides: '隠れる部材',
  hidesNothing: '隠れる部材はありません。',
  least: '必要な記録：{{stage}}',
  missing: '足りない部分：{{parts}}',
  place: '場所',
  stages: '段階',
  contradicted: '後の写真が前の段階を示しています。',
  alt: '{{mark}}、{{stage}}',
  whole: '写真全体：{{mark}}、{{stage}}',
  taken: '{{when}}撮影',
  undated: '撮影日時不明',
  coverings: 'これを隠す工事',
  caution:
    '写真の記録は検査の代わりにはなりません。記録があることと、部材に問題がないことは別です。何を誰が検査するかは、法令と有資格者の判断によります。',
} as const satisfies TranslationOf<typeof english>;
