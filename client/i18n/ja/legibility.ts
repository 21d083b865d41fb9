import type { TranslationOf } from '../catalog.ts';
import type { legibility as english } from '../en/legibility.ts';

export const legibility = {
  verdict: { clear: 'はっきり', weak: 'やや不鮮明', unreadable: '判別できない' },
  reason: {
    'too-small': '小さすぎる',
    blurred: 'ぼけ',
    'too-dark': '暗い',
    'too-bright': '明るすぎる',
    'not-measured': '測れない',
  },
  because: '{{verdict}}（{{reasons}}）',
  notMeasured: '写りの良し悪しは測れません',
  notYet: '写りはまだ調べていません',
  mark: '写り：{{words}}',
  line: {
    clear: 'はっきり写っています。',
    'not-measured': 'このファイルでは写りの良し悪しを測れません。',
    weak: {
      'too-small': '小さめです（幅 {{px}} px）。もう少し寄るとよくなります。',
      blurred: '少しぼけています。',
      'too-dark': '暗めです。',
      'too-bright': '明るすぎて、白く飛んだところがあります。',
    },
    unreadable: {
      'too-small': '小さすぎて判別できません（幅 {{px}} px）。もっと寄ってください。',
      blurred: 'ぼけて判別できません。カメラを止めて撮り直してください。',
      'too-dark': '暗くて判別できません。明かりを当てて撮り直してください。',
      'too-bright': '明るすぎて判別できません。光を避けて撮り直してください。',
    },
  },
  noRecord: 'このままでは記録になりません。',
  alike: {
    of: '似た{{total}}枚の{{at}}枚目',
    sharpest: '一番鮮明',
    title: 'ほとんど同じ写真',
    lead_other: 'ほとんど同じ写真がほかに{{count}}枚あります。',
    thisIs: 'この写真が一番鮮明です。記入はこの写真へ。',
    go: '一番鮮明な写真へ',
    open: '{{file}}（{{when}}）を開く',
    openSharpest: '{{file}}（{{when}}）を開く 一番鮮明',
    noTime: '日付なし',
    strip: 'ほとんど同じ写真の一覧',
  },
} as const satisfies TranslationOf<typeof english>;
