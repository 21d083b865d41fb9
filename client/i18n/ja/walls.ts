import type { TranslationOf } from '../catalog.ts';
import type { walls as english } from '../en/walls.ts';

export const walls = {
  title: '土壁の仕様との見比べ',
  lead: 'この壁の貫と小舞について、部材表の値を告示の値と並べます。参考であり、適合の判定ではありません。',
  none: {
    'no-grid': '通り芯がないため、この壁に何があるか分かりません。',
    'zone-impossible': 'この壁の通りが、いまの通り芯にありません。ふさぎ工事か通り芯を直してください。',
  },
  table: '{{name}} の値',
  columns: { rule: '項目', published: '告示の値', schedule: '部材表', verdict: '見比べ' },
  rule: {
    'rail-thickness': '貫の厚さ',
    'rail-width': '貫の幅',
    'rail-spacing': '貫の間隔',
    'rail-count': '柱間ごとの貫の本数',
    'carrier-size': '間渡し竹の太さ',
    'lath-size': '小舞竹の幅',
    'lath-spacing': '小舞竹の間隔',
  },
  at: { least: '{{value}} 以上', most: '{{value}} 以下' },
  unit: { mm: '{{value}} mm', pieces: '{{value}} 本' },
  read: { quotation: '（引用による）', summary: '（要約による）', memory: '（未確認）' },
  measured: { least: '最小 {{value}}', most: '最大 {{value}}' },
  nothing: '不明',
  looked_other: '（対象の部材{{count}}本）',
  verdict: {
    'as published': '告示の値に合う',
    differs: '告示の値と違う',
    'cannot be told': '判断できない',
  },
  because: {
    'none-in-schedule': '部材表に、この壁の該当部材がない',
    'place-unknown': '位置か高さが部材表にないものがある',
    'section-assumed': '断面が部材表になく、仮の値を使っている',
    reading: '内法なら収まり、心々なら超える（どちらで測るかは告示の本文による）',
  },
  differing: '違う部材：',
  more_other: 'ほか{{count}}本',
  stop: '。',
  comma: '、',
  source: '出典：',
  set: {
    'moc-1100-1981/2003': {
      source: '昭和56年6月1日 建設省告示第1100号',
      edition: '平成15年12月9日 国土交通省告示第1543号による改正後',
      unconfirmed:
        '値は告示の引用と要約から採ったものです。使う前に、いま有効な本文で確かめてください。2025年4月1日から別の番号の規定に移ったとされます。間隔を心々で測るか内法で測るかも、本文によります。',
      notLookedAt:
        '部材表では分からないため見ていないもの：貫の柱への楔止めと継手の位置、間渡し竹の柱・梁・土台への差込みと貫への釘止め、小舞竹の縄がけと柱・梁との隙間、壁土・すさ・塗り厚。',
    },
  },
  until: '{{day}} までの規定です。',
  caution:
    '建築地で有効な法令、図面、仕様書との照合は、資格のある人が行ってください。部材表だけによるもので、壁は実測していません。',
} as const satisfies TranslationOf<typeof english>;
