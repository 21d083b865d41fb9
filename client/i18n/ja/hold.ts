import type { hold as english } from '../en/hold.ts';
import type { TranslationOf } from '../catalog.ts';

export const hold = {
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
