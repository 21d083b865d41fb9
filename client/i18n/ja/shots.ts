import type { TranslationOf } from '../catalog.ts';
import type { shots as english } from '../en/shots.ts';

export const shots = {
  title: '撮影リスト',
  lead: 'ふさぐ前に記録が要るものを、ひと回りの順に並べます。どこに立ち、どちらを向き、何を撮るか。',
  print: '現場用に印刷',
  addPhotos: '写真を追加',
  within: 'ふさぐまで',
  days_other: '{{count}}日以内',
  all: 'ふさいでいないものすべて',
  nothing: 'それまでにふさぐものに、足りない記録はありません。',
  nothingAtAll: '足りない記録はありません。これから隠れる部材に未記録はありません。',
  later_other: 'ほかに未記録が{{count}}本あります（ふさぐのが後か、日が未定）。',
  showAll: 'すべて表示',
  progress: '撮るところ{{total}}か所のうち、記録あり{{done}}か所（長い部材は数か所に分かれます）',
  lost_other: '{{count}}件は記録のないままふさがれました。',
  unasked_other: '{{count}}件は記録が不要になりました。',
  closedSince_other:
    'この順路を作った後に{{names}}がふさがれました。立ち位置から見えなくなったものがあるかもしれません。順路を作り直してください。',
  since: '{{when}} の順路です。記録が届くと印が付き、並びは変わりません。',
  added_other: 'この順路にない未記録が{{count}}本あります。',
  order: '順路を作り直す',
  level: '{{level}}',
  noLevel: '立ち位置',
  plan: '立ち位置の図：{{numbers}}',
  planKey: '数字：立ち位置（回る順）。三角：向く方。二重丸：上か下も見る。太線：足りない部分。',
  place: '立ち位置 {{number}}',
  where: {
    room: '{{from}} と {{to}} の間の中ほど',
    wall: '{{line}}通りの {{from}}〜{{to}} から 1 m、{{beside}}通りの側',
    outside: '{{line}}通りの {{from}}〜{{to}} から 1 m、外側',
  },
  look: {
    line: '{{line}}通りを向く',
    up: '上を向く',
    down: '下を向く',
  },
  noFloor: 'ここに床がある記録はありません。固定した足場板か足場の上からだけ撮ってください。',
  noGround: '外の高い所です。そのための足場の上からだけ撮ってください。',
  covering: '{{covering}}',
  coveringSo: '{{covering}}：{{state}}',
  state: {
    'on-record': '記録あり',
    lost: '記録のないままふさがれた',
    unasked: '記録は不要になった',
  },
  unseen: 'どの立ち位置からも見えないもの',
  unseenReason: {
    blocked:
      'どこに立っても、建っているものか、ふさいだものが前にあります。足元の確かな所からすき間を探し、安全に見えないものは現場の責任者に相談してください。',
    'out-of-reach':
      'どの立ち位置からも 6 m より遠いか、端からしか見えません。足場があるときか、まだ地上にあるうちに撮ってください。',
  },
  placeless: '位置の分からない部材',
  placelessText: '部材表に位置がないため、部材表の場所ごとに並べます。',
  toSchedule: '部材表を補う',
  noGrid:
    '通り芯がまだ入力されていないので、立ち位置を求められません。通り芯と階を入力し、部材表に位置を入れてください。それまでは場所ごとに並べます。',
  toGrid: '通り芯を入力',
  byPlace: '場所ごと',
  caution:
    '立つのは、地面、張り終えた床、使用許可の出た足場の上だけにしてください。撮影のために登ったり、手や身を乗り出したりしないこと。床の開口に注意し、現場の規則と責任者の指示に従ってください。',
  known:
    '視線をさえぎるものは、記録にある範囲でしか分かりません。見えないときは、安全な別の場所を探してください。',
  tickHint: '撮影したら、この紙に印を付けてください。',
} as const satisfies TranslationOf<typeof english>;
