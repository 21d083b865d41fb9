import type { hold as english } from '../en/hold.ts';
import type { TranslationOf } from '../catalog.ts';

export const hold = {
  title: 'ふさぐ前の検査',
  state: {
    planned: '検査前',
    ready: '検査待ち',
    refused: '差し戻し',
    released: '承認済み',
    'under-release': '承認を受けてふさいだ',
    'without-release': '承認なしにふさいだ',
  },
  said: {
    planned: '検査の依頼はまだありません。',
    ready: '{{when}}に{{who}}さんが検査を依頼しました。',
    refused: '{{when}}に{{who}}さんが差し戻しました。まだふさげません。',
    released: '{{when}}に{{who}}さんが承認しました。ふさぐことができます。',
  },
  lacking_other: '不備のある部材 {{count, number}}本：',
  without: '承認なしにふさぎました。理由：{{reason}}',
  unsaid: '承認なしにふさぎました。理由は入力されていません。',
  toRelease: '承認の内容へ',
  toReview: '検査する',
  toLook: '検査の画面を見る',
  ready: {
    open: '検査を依頼する…',
    title: '{{name}} の検査を依頼しますか？',
    text: '検査する人が、隠れる部材とその記録を一本ずつ確かめ、承認するか差し戻します。',
    gaps_other:
      '記録のない部材が{{count, number}}本あります。検査する人は、理由を付けて一本ずつ認めるか、差し戻すことになります。',
    note: '検査する人への覚え書き',
    submit: '依頼する',
  },
  back: {
    open: '検査の依頼を取り下げる…',
    title: '{{name}} の検査の依頼を取り下げますか？',
    text: 'もう一度依頼するまで、承認も差し戻しもできません。依頼も取り下げも台帳に残ります。',
    submit: '取り下げる',
  },
  say: {
    ready: '「{{name}}」の検査を頼みました。',
    'ready-withdrawn': '「{{name}}」の検査を取り下げました。',
    refused: '「{{name}}」を差し戻しました。まだふさげません。',
    lacking: '「{{name}}」を差し戻しました。まだふさげません。足りないもの：{{marks}}。',
    released: '「{{name}}」をふさぐことを承認しました。初めの{{size, number}}項目に基づきます。',
    waived_other:
      '「{{name}}」をふさぐことを承認しました。初めの{{size, number}}項目に基づき、{{count, number}}本は記録のないまま認めました。',
    'release-withdrawn': '「{{name}}」の承認を取り消しました。',
    disputed: '{{mark}} の記入に異議を述べました。',
    closed: '「{{name}}」は承認を受けて{{when}}にふさいだとしました。',
    without: '{{sentence}}承認なし：{{reason}}',
    note: '{{sentence}}覚え書き：{{note}}',
    fourEyes: '自分だけで記録したものは、自分で承認できないことにしました。',
    twoEyes: '自分だけで記録したものも、自分で承認できることにしました。',
  },
  close: {
    under: '{{when}}の{{who}}さんの承認を受けてふさぎます。',
    without:
      '隠れる部材すべてについての承認はまだありません。工事は進められますが、承認なしにふさいだことと理由が、消えない記録として残ります。',
    reason: '承認なしにふさぐ理由',
    needReason: '承認なしにふさぐ理由を入れるか、先に検査を受けてください。',
  },
} as const satisfies TranslationOf<typeof english>;
