import type { TranslationOf } from '../catalog.ts';
import type { days as english } from '../en/days.ts';

export const days = {
  title: '日誌',
  today: '今日のページ',
  next: '次にふさぐところ',
  nextNone:
    '隠蔽工事の予定がありません。何がいつ木組みを隠すかを入れると、足りない記録の件数がここに出ます。',
  nextAllClosed:
    '予定した隠蔽工事はすべてふさぎ終わりました。まだ隠れるところがあれば、次の工事を予定してください。',
  plan: '隠蔽工事を予定する',
  wholeReport: '隠蔽前の確認表へ',
  noDay: '日付未定',
  left: {
    late_other: '予定日を{{count, number}}日過ぎた',
    today: '今日',
    ahead_other: 'あと{{count, number}}日',
  },
  gapsLeft_other: '隠れる{{hidden}}、うち記録漏れ {{count, number}}件',
  complete_other: '隠れる部材 {{count, number}}本、すべて記録あり',
  hidesNothing: '隠れる部材は未定',
  days: '日ごとのページ',
  daysNone: '写真も入力もまだありません',
  daysNoneText: '部材表を取り込み、最初の写真を送ってください。',
  loadSchedule: '部材表を取り込む',
  sendPhotos: '写真を送る',
  day: {
    title: '一日のページ',
    before: '前の日',
    after: '次の日',
    photos: '写真（撮影順）',
    photosNone: 'この日の写真はないか、まだ送られていません。',
    photoLabel: '{{file}}、{{time}}撮影、{{tags}}',
    changes: 'この日の台帳',
    changesNone:
      'この日に入力されたものはありません。この日の写真について後から入力したものは、入力した日のページに載ります。',
    notes: '覚え書き',
    noteBy: '{{name}}、{{when}}',
    ownNote: 'この日の覚え書き（あなた）',
    ownNoteHint: '天気、居合わせた人、決まったことなど。書き直す前の文は台帳に残ります。',
    saveNote: '覚え書きを保存',
    noteSaved: '覚え書きを保存しました。',
    closings: 'この日にふさぐところ',
    closed: 'ふさぎ済み',
    planned: '予定',
    invalid: '日付ではありません',
    invalidText: '日付は「年-月-日」で書きます（例 2026-04-01）。',
  },
} as const satisfies TranslationOf<typeof english>;
