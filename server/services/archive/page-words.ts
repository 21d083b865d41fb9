import type { ToldZone } from '#domain/record/sheet/told-zone';
import type { OfCovering } from './archive-material.ts';
import type { DoubtSaid } from './doubts.ts';

/** The words of the page in an archive; those of stages and coverings are the report's. */
export interface PageWords {
  readonly title: (house: string) => string;
  readonly lead: (when: string) => string;
  readonly times: (zone: ToldZone) => string;
  readonly entries: (count: number, head: string) => string;
  readonly check: string;
  readonly caution: string;
  readonly coverings: string;
  readonly members: string;
  readonly days: string;
  readonly people: string;
  readonly undated: string;
  readonly planned: string;
  readonly closed: string;
  readonly hides: string;
  /** Of what is asked for of a member. */
  readonly least: (stage: string) => string;
  readonly onRecord: (state: string, records: number) => string;
  /** With the reasons for which nothing counts. */
  readonly gap: (state: string, reasons: string) => string;
  /** Of a gap that the release which stands accepts. */
  readonly accepted: (who: string, when: string, reason: string) => string;
  /** Of one that was taken back since. */
  readonly acceptedBefore: (accepted: string, who: string, when: string, reason: string) => string;
  readonly hold: string;
  readonly waived: string;
  /** Of a closing without release; null where nobody said why. */
  readonly without: (reason: string | null) => string;
  readonly under: (release: string) => string;
  readonly underTakenBack: (release: string) => string;
  readonly release: (release: string) => string;
  /** Where a word stands in the ledger; `seq` counts from 0. */
  readonly entry: (seq: number) => string;
  readonly roleGiven: (name: string, role: string) => string;
  readonly roleTaken: (name: string) => string;
  readonly open: string;
  /** Of a covering of which nothing was said but its plan. */
  readonly planOnly: string;
  readonly standing: Readonly<Record<string, string>>;
  /** Of a release that does not cover these members as they stand now; `phase` names it. */
  readonly outrun: (phase: string, marks: readonly string[]) => string;
  /** Over what was said of a covering. */
  readonly story: string;
  readonly holds: Readonly<Record<OfCovering['kind'], string>>;
  readonly doubts: Readonly<Record<DoubtSaid['what'], (mark: string) => string>>;
  readonly retired: string;
  readonly noRecord: string;
  readonly by: (name: string) => string;
  /** Between what was said and by whom, and before a reason. */
  readonly and: string;
  readonly colon: string;
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
    times: ({ name, offset }) => `Times are those of the house: ${name} (${offset}).`,
    entries: (count, head) => `The ledger has ${count} entries. Its tree head is ${head}.`,
    check:
      'Nothing vouches for this page, nor for check.html beside it: whoever alters an archive can alter them, too, and their hashes in the manifest find damage only. What was released and closed, let a checker tell you that you got elsewhere and that reads it from the ledger itself: “npm run verify” of this program, or the page /check of a server that you trust.',
    caution:
      'A photo record does not replace inspection, and a member on record is not a member found sound. What must be inspected before it is covered, and by whom, is decided by local codes, the authority and licensed practice.',
    coverings: 'Coverings',
    members: 'Members',
    days: 'Days',
    people: 'People',
    undated: 'No date',
    planned: 'Planned day',
    closed: 'Closed',
    hides: 'Hides',
    least: (stage) => `at least ${stage}`,
    onRecord: (state, records) => `${state} (${records} ${records === 1 ? 'record' : 'records'})`,
    gap: (state, reasons) => `${state}: ${reasons}`,
    acceptedBefore: (accepted, who, when, reason) =>
      `${accepted}; that release was taken back by ${who} on ${when}: ${reason}`,
    accepted: (who, when, reason) => `accepted without a record by ${who} on ${when}: ${reason}`,
    hold: 'Inspection before it closes',
    waived: 'Accepted without a record',
    without: (reason) =>
      reason === null ? 'closed without release, and nobody said why' : `closed without release: ${reason}`,
    under: (release) => `closed under the release ${release}`,
    underTakenBack: (release) => `closed under the release ${release}, which was taken back since`,
    release: (release) => `release number ${release}`,
    entry: (seq) => `ledger entry No. ${seq + 1}`,
    roleGiven: (name, role) => `${name} was given the role of ${role}`,
    roleTaken: (name) => `the role of ${name} was taken back`,
    open: 'not closed yet',
    planOnly: 'not inspected yet',
    standing: {
      'covering.ready': 'ready for inspection',
      'covering.ready-withdrawn': 'not inspected yet; no longer said to be ready',
      'covering.refused': 'refused',
      'covering.released': 'released: it may close',
      'release.withdrawn': 'release taken back: it may not close',
    },
    outrun: (phase, marks) =>
      `${phase}; members that it does not cover now: ${someMarks(marks, ', ', (count) => `${count} more`)}. It may not close before it is inspected anew.`,
    story: 'What was said of it:',
    holds: {
      'covering.ready': 'said to be ready for inspection',
      'covering.ready-withdrawn': 'no longer said to be ready',
      'covering.refused': 'refused',
      'covering.released': 'released',
      'release.withdrawn': 'release taken back',
      'covering.closed': 'closed on',
      'covering.reopened': 'closing taken back',
    },
    doubts: {
      doubted: (mark) => `tag of ${mark} doubted`,
      answered: (mark) => `doubt about the tag of ${mark} answered`,
      reopened: (mark) => `answer about the tag of ${mark} taken back`,
    },
    retired: 'retired',
    noRecord: 'No record.',
    by: (name) => `by ${name}`,
    and: ', ',
    colon: ': ',
    program: 'the program',
    none: 'none',
    firstDay: 'First day on site',
    addedAt: 'added',
  },
  ja: {
    title: (house) => `「${house}」の記録`,
    lead: (when) =>
      `${when} 時点の記録です。このページはサーバーがなくても開けます。並んでいる写真は元のファイルそのものです。`,
    times: ({ name, offset }) => `時刻は建物の時間帯、${name}（${offset}）です。`,
    entries: (count, head) => `台帳は全${count}項目。ハッシュ木の最上位ハッシュは ${head}。`,
    check:
      'このページも隣の check.html も、保証するものはありません。記録一式を書き換える人はこの二つも書き換えられ、manifest.json にあるハッシュで分かるのは破損だけです。何が承認され、いつふさいだかは、別の所から手に入れたもので確かめ、台帳から読み取らせてください（このプログラムの「npm run verify」、または信頼できるサーバーの /check のページ）。',
    caution:
      '写真の記録は検査に代わるものではなく、記録のある部材が健全だと確かめられたわけでもありません。ふさぐ前に何を誰が検査するかは、法令、行政、資格者の判断によります。',
    coverings: 'ふさぎ工事',
    members: '部材',
    days: '日ごとの写真',
    people: '関係者',
    undated: '日付なし',
    planned: '予定日',
    closed: 'ふさいだ日時',
    hides: '隠れる部材',
    least: (stage) => `必要な段階「${stage}」`,
    onRecord: (state, records) => `${state}（${records}件）`,
    gap: (state, reasons) => `${state}（${reasons}）`,
    acceptedBefore: (accepted, who, when, reason) =>
      `${accepted}。その承認は${who}が取り消した（${when}）。理由：${reason}`,
    accepted: (who, when, reason) => `${who}が記録なしで認めた（${when}）。理由：${reason}`,
    hold: 'ふさぐ前の検査',
    waived: '記録なしで認めた部材',
    without: (reason) =>
      reason === null
        ? '承認なしにふさいだ。理由は入力されていない。'
        : `承認なしにふさいだ。理由：${reason}`,
    under: (release) => `承認 ${release} を受けてふさいだ`,
    underTakenBack: (release) => `承認 ${release} を受けてふさいだが、その承認は後で取り消された`,
    release: (release) => `承認の番号 ${release}`,
    entry: (seq) => `台帳の第${seq + 1}項目`,
    roleGiven: (name, role) => `${name}に「${role}」の役割`,
    roleTaken: (name) => `${name}の役割を外した`,
    open: 'まだふさいでいない',
    planOnly: '検査前',
    standing: {
      'covering.ready': '検査待ち',
      'covering.ready-withdrawn': '検査前（検査の依頼は取り下げ）',
      'covering.refused': '差し戻し',
      'covering.released': '承認済み（ふさいでよい）',
      'release.withdrawn': '承認の取り消し（ふさいではいけない）',
    },
    outrun: (phase, marks) =>
      `${phase}（承認が及ばない部材：${someMarks(marks, '、', (count) => `ほか${count}本`)}）。ふさいではいけない。`,
    story: '経過：',
    holds: {
      'covering.ready': '検査を依頼',
      'covering.ready-withdrawn': '検査の依頼を取り下げ',
      'covering.refused': '差し戻し',
      'covering.released': '承認',
      'release.withdrawn': '承認を取り消し',
      'covering.closed': 'ふさいだ日時',
      'covering.reopened': 'ふさぎ済みを取り消し',
    },
    doubts: {
      doubted: (mark) => `${mark} の記入に疑義`,
      answered: (mark) => `${mark} の記入への疑義に回答`,
      reopened: (mark) => `${mark} の記入への回答を取り消し`,
    },
    retired: '取りやめ',
    noRecord: '記録なし。',
    by: (name) => `${name}`,
    and: '、',
    colon: '：',
    program: 'プログラム',
    none: 'なし',
    firstDay: '現場の初日',
    addedAt: '追加',
  },
};

/** So many are named; which ones stand worst is told member by member below. */
const NAMED = 12;

function someMarks(marks: readonly string[], and: string, more: (count: number) => string): string {
  const left = marks.length - NAMED;
  return [...marks.slice(0, NAMED), ...(left > 0 ? [more(left)] : [])].join(and);
}
