import type { TranslationOf } from '../catalog.ts';
import type { calendar as english } from '../en/calendar.ts';

export const calendar = {
  title: 'カレンダーで見る',
  lead: 'アドレスで登録できるカレンダーに、いつ何がふさがるかを未記録の件数とともに表示できます。カレンダーは1時間ごとを目安に自分で読み直します。',
  reads:
    'このアドレスを知っている人は、サインインせずに、建物の名前、ふさぎ工事の名前・種類・日付、記録のない部材の番付と種類を読めます。それ以外は読めず、何も変更できません。ご自分のカレンダー以外には渡さないでください。',
  make: 'アドレスを作る',
  makeNew: 'アドレスを作り直す…',
  madeTitle: 'あなたのアドレスです。今しか表示されません。',
  madeText:
    'カレンダーの「URLで追加」などの欄に入れてください。この建物での役割が外れると、アドレスも使えなくなります。',
  address: 'カレンダーのアドレス',
  have: '{{when}}にアドレスを作りました（表題は{{language}}）。',
  language: { en: '英語', ja: '日本語' },
  readLast: '最後に読まれたのは{{when}}です。',
  neverRead: 'まだ読まれていません。',
  end: 'アドレスを無効にする…',
  endTitle: 'カレンダーのアドレスを無効にしますか？',
  endText: 'これを登録したカレンダーには、もう何も届きません。元には戻せません。',
  endYes: '無効にする',
  newTitle: 'カレンダーのアドレスを作り直しますか？',
  newText:
    '今のアドレスはすぐに使えなくなります。使っているカレンダーに新しいアドレスを入れ直してください。表題は今の画面の言語になります。',
} as const satisfies TranslationOf<typeof english>;
