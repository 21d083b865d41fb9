import type { needs as english } from '../en/needs.ts';
import type { TranslationOf } from '../catalog.ts';

export const needs = {
  title: '隠れる前に要る記録',
  lead: '仕上げの種類ごとに、何が隠れるか、隠れる前にどの段階まで写しておくか。はじめは一般的な内容です。この家で違うところをここで決めます。',
  link: '隠れる前に要る記録',
  columns: {
    kind: '種類',
    hides: '隠れるか',
    least: '写す段階',
    views: '各部分の写真',
  },
  hidden_other: '{{count, number}}種類が隠れる',
  own_other: 'この家で決めたもの{{count, number}}種類',
  stated: 'この家で決定',
  hidesKind: '{{kind}}を隠す',
  isHidden: '隠れる',
  staysVisible: '見えたまま',
  usual: '普通：{{stage}}',
  leastOf: '{{kind}}を写す段階',
  viewsOf: '{{kind}}の各部分の写真',
  change: '変える',
  changeOf: '変える：{{kind}}',
  back: '普通に戻す',
  backOf: '普通に戻す：{{kind}}',
  add: 'ほかに隠れる種類',
  addOpen: '種類を見る',
  caution:
    '隠れる前に何を検査するかは、その土地の建築基準と、資格をもつ検査者が決めます。この表は写真を求めるもので、検査の代わりにはなりません。',
  saved: '表を記録しました。各範囲で隠れるものを計算し直しました。',
} as const satisfies TranslationOf<typeof english>;
