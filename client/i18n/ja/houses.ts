import type { TranslationOf } from '../catalog.ts';
import type { houses as english } from '../en/houses.ts';

export const houses = {
  title: '記録中の建物',
  none: '建物はまだありません',
  noneText:
    'まず建物の記録を始めてください。次に部材表を取り込み、写真を送り、何がいつ何を隠すかを入れます。',
  open: '建物の記録を始める',
  openLead:
    'あなたが記録の責任者となり、ほかの人に役割を渡します。次の事項はどれも後で変えられます。変える前の内容は台帳に残ります。',
  submit: '記録を始める',
  role: '役割：{{role}}',
  list: '担当の建物',
  fields: {
    name: '建物の名前',
    nameHint: '現場での呼び名。',
    zone: '現場の時間帯',
    zoneHint: '日付とふさぐ日はこの時間帯で数えます。都市名で絞り込めます。',
    firstDay: '現場の初日',
    firstDayHint: 'これより前の日付の写真は記録に数えません。空欄でもかまいません。',
    site: '現場の位置',
    siteHint: '緯度, 経度（度）。例 35.0116, 135.7681。空欄でもかまいません。',
  },
  missing: {
    name: '建物の名前を入れてください。',
    zone: '一覧から時間帯を選んでください。',
    site: '緯度（−90〜90）と経度（−180〜180）を、コンマで区切って入れてください。',
  },
  settings: {
    title: '建物概要',
    lead: '現場全体について分かっていること。',
    onlyKeeper: '変更できるのは記録の責任者だけです。',
    unset: '未入力',
    saved: '建物概要を保存しました。',
    siteEmptied: '位置がないと、写真が現場内か現場外か分からなくなります。',
  },
} as const satisfies TranslationOf<typeof english>;
