/** The words of the page in an archive; those of stages and coverings are the report's. */
export interface PageWords {
  readonly title: (house: string) => string;
  readonly lead: (when: string) => string;
  readonly entries: (count: number, head: string) => string;
  readonly check: string;
  readonly caution: string;
  readonly coverings: string;
  readonly members: string;
  readonly days: string;
  readonly undated: string;
  readonly planned: string;
  readonly closed: string;
  readonly hides: string;
  readonly hold: string;
  readonly released: (when: string, by: string) => string;
  readonly withdrawn: (when: string, by: string, reason: string) => string;
  readonly waived: string;
  readonly without: (reason: string) => string;
  readonly holds: Readonly<Record<string, string>>;
  readonly retired: string;
  readonly noRecord: string;
  readonly by: (name: string) => string;
  readonly program: string;
  readonly none: string;
  readonly firstDay: string;
  readonly addedAt: string;
}

export const PAGE_WORDS: Readonly<Record<'en' | 'ja', PageWords>> = {
  en: {
    title: (house) => `Record of ${house}`,
    lead: (when) =>
      `What the record said on ${when}. This page opens without a server; the photos beside it are the original files.`,
    entries: (count, head) => `The ledger has ${count} entries. Its tree head is ${head}.`,
    check:
      'To check that nothing was altered, open check.html and give it this archive; better still, a copy of that page that did not come with it.',
    caution:
      'A photo record does not replace inspection, and a member on record is not a member found sound. What must be inspected before it is covered, and by whom, is decided by local codes, the authority and licensed practice.',
    coverings: 'Coverings',
    members: 'Members',
    days: 'Days',
    undated: 'No date',
    planned: 'Planned day',
    closed: 'Closed',
    hides: 'Hides',
    hold: 'Hold point',
    released: (when, by) => `Released ${when}, ${by}`,
    withdrawn: (when, by, reason) => `withdrawn ${when}, ${by}: ${reason}`,
    waived: 'Accepted without a record',
    without: (reason) => `closed without release: ${reason}`,
    holds: {
      'covering.ready': 'ready for inspection',
      'covering.ready-withdrawn': 'no longer ready for inspection',
      'covering.refused': 'refused',
      'covering.released': 'released',
      'release.withdrawn': 'release withdrawn',
    },
    retired: 'retired',
    noRecord: 'No record.',
    by: (name) => `by ${name}`,
    program: 'the program',
    none: 'none',
    firstDay: 'First day on site',
    addedAt: 'added',
  },
  ja: {
    title: (house) => `「${house}」の記録`,
    lead: (when) =>
      `${when} 時点の記録です。このページはサーバーがなくても開けます。並んでいる写真は元のファイルそのものです。`,
    entries: (count, head) => `台帳は全${count}項目。ハッシュ木の最上位ハッシュは ${head}。`,
    check:
      '書き換えられていないことを確かめるには、check.html を開いてこの記録一式を渡してください。別の所から入手した同じページを使えば、さらに確かです。',
    caution:
      '写真の記録は検査に代わるものではなく、記録のある部材が健全だと確かめられたわけでもありません。ふさぐ前に何を誰が検査するかは、法令、行政、資格者の判断によります。',
    coverings: 'ふさぎ工事',
    members: '部材',
    days: '日ごとの写真',
    undated: '日付なし',
    planned: '予定日',
    closed: 'ふさいだ日時',
    hides: '隠れる部材',
    hold: '立会い・確認',
    released: (when, by) => `ふさいでよいとした：${when}、${by}`,
    withdrawn: (when, by, reason) => `取り消し：${when}、${by}（${reason}）`,
    waived: '記録なしで認めたもの',
    without: (reason) => `確認を経ずにふさいだ：${reason}`,
    holds: {
      'covering.ready': '確認待ち',
      'covering.ready-withdrawn': '確認待ちを取り消し',
      'covering.refused': '差し戻し',
      'covering.released': 'ふさいでよい',
      'release.withdrawn': 'ふさいでよいとしたことを取り消し',
    },
    retired: '取りやめ',
    noRecord: '記録なし。',
    by: (name) => `${name}`,
    program: 'プログラム',
    none: 'なし',
    firstDay: '現場の初日',
    addedAt: '追加',
  },
};
