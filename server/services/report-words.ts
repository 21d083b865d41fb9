import type { DatedBy } from '#domain/contract/clock';
import type { CoveringKind } from '#domain/contract/shapes';
import type { ClosingReportView, MissReason } from '#domain/contract/report-views';
import { HOLD_NAMES } from '#domain/record/hold-names';
import type { HoldPhase } from '#domain/record/hold-phase';
import type { FindingKind } from '#domain/record/findings/kinds';
import { FINDING_NAMES } from '#domain/record/findings/names';
import type { Verdict } from '#domain/photo/legibility';
import type { Stage } from '#domain/frame/stage';

type LineState = ClosingReportView['days'][number]['coverings'][number]['lines'][number]['state'];

export interface ReportWords {
  readonly headings: readonly [string, ...string[]];
  readonly kind: Readonly<Record<CoveringKind, string>>;
  readonly stage: Readonly<Record<Stage, string>>;
  readonly state: Readonly<Record<LineState, string>>;
  /** How the time of the photo came to be known. */
  readonly datedBy: Readonly<Record<DatedBy, string>>;
  readonly miss: Readonly<Record<MissReason, string>>;
  readonly legibility: Readonly<Record<Verdict, string>>;
  /** What is to be looked at about a tag. */
  readonly finding: Readonly<Record<FindingKind, string>>;
  /** Of a doubt, with its answer where there is one. */
  readonly doubted: (
    doubt: { by: string; reason: string },
    answer: { by: string | null; reason: string } | null,
  ) => string;
  /** Of a finding that somebody has answered. */
  readonly accepted: (finding: string, by: string, reason: string) => string;
  /** Where a covering stands with its inspection. */
  readonly phase: Readonly<Record<HoldPhase, string>>;
  /** Of a release that a covering closed under. */
  readonly takenBack: (by: string, since: string, reason: string) => string;
  /** Of a gap that a release accepts. */
  readonly waived: (by: string, since: string, reason: string) => string;
  /** Of a gap: what must be lifted before there can be a photo. */
  readonly liesUnder: (name: string, since: string) => string;
  /** Between several reasons. */
  readonly and: string;
  readonly between: (from: string, to: string) => string;
}

/** The words of the closing report as a file; on screen the same ones stand in the client's catalogs. */
export const REPORT_WORDS: Readonly<Record<'en' | 'ja', ReportWords>> = {
  en: {
    headings: [
      'Closing day',
      'Covering',
      'Kind of covering',
      'Planned day',
      'Closed at',
      'Days left',
      'Inspection',
      'Reason',
      'Mark',
      'Kind',
      'Place',
      'Least stage',
      'State',
      'Nearest miss',
      'Stage seen',
      'Photographed at',
      'Photo',
      'Records',
      'Time known by',
      'Legibility',
      'Findings',
      'Photos needed',
      'Hidden part',
      'Hidden, m',
      'Missing parts',
      'Missing, m',
    ],
    kind: {
      plaster: 'plaster coat',
      floor: 'floor',
      ceiling: 'ceiling',
      'roof-boards': 'roof boards',
      other: 'other layer',
    },
    stage: { cut: 'cut', raised: 'raised', pegged: 'pegged', 'lath-on': 'lath on', plastered: 'plastered' },
    state: {
      'on-record': 'on record',
      gap: 'gap',
      lost: 'lost',
      waived: 'accepted without a record',
      'hidden-before': 'hidden before by another layer',
      retired: 'retired',
    },
    datedBy: {
      file: 'the photo file',
      'clock-mark': 'the photo file, put right by clock marks',
      'by-hand': 'dated by hand',
    },
    miss: {
      'no-photo': 'tagged on no photo',
      'other-stretch': 'photographed, but another part of it',
      'part-only': 'only a part of it is on record',
      'too-few-views': 'too few photos show it',
      'before-stage': 'photographed, but before the stage that is needed',
      'shows-the-covering': 'the photo already shows the covering',
      'under-protection': 'photographed while protection lay over it',
      'perhaps-under-protection':
        'photographed so near to when protection lay over it that it may have been under it',
      'after-closing': 'photographed after closing',
      'perhaps-after-closing': 'photographed so shortly before closing that it may have been after it',
      undated: 'the photo has no date',
      'before-first-day': "the photo's date lies before the first day on site",
      'after-upload': "the photo's date lies after the day it was added",
      disputed: 'somebody doubts it; see the findings',
      contradicted: 'something on record contradicts it; see the findings',
      unreadable: 'the member cannot be read in the photo',
    },
    legibility: { clear: 'clear', weak: 'weak', unreadable: 'unreadable' },
    finding: FINDING_NAMES.en,
    doubted: (doubt, answer) =>
      `doubted by ${doubt.by}: ${doubt.reason}` +
      (answer ? `; answered by ${answer.by ?? ''}: ${answer.reason}` : ''),
    accepted: (finding, by, reason) => `${finding} (accepted by ${by}: ${reason})`,
    phase: HOLD_NAMES.en,
    takenBack: (by, since, reason) => `release taken back by ${by} on ${since}: ${reason}`,
    waived: (by, since, reason) => `accepted by ${by} on ${since}: ${reason}`,
    liesUnder: (name, since) => `lies under protection since ${since} (${name})`,
    and: '; ',
    between: (from, to) => `${from} to ${to}`,
  },
  ja: {
    headings: [
      'ふさぐ日',
      'ふさぎ工事',
      '種類',
      '予定日',
      'ふさいだ日時',
      '残り日数',
      '検査',
      '理由',
      '番付',
      '部材',
      '場所',
      '必要な段階',
      '状態',
      '記録に足りない点',
      '写っている段階',
      '撮影日時',
      '写真',
      '記録数',
      '日時の根拠',
      '写り',
      '要確認',
      '必要な枚数',
      '隠れる部分',
      '隠れる長さ（m）',
      '未記録の部分',
      '未記録の長さ（m）',
    ],
    kind: {
      plaster: '壁塗り',
      floor: '床張り',
      ceiling: '天井張り',
      'roof-boards': '野地板張り',
      other: 'その他',
    },
    stage: { cut: '刻み', raised: '建て方', pegged: '緊結', 'lath-on': '小舞掻き', plastered: '壁塗り' },
    state: {
      'on-record': '記録あり',
      gap: '未記録',
      lost: '記録なしで隠蔽',
      waived: '記録なしで認めた',
      'hidden-before': '前の層で隠れた',
      retired: '取りやめ',
    },
    datedBy: {
      file: '写真ファイル',
      'clock-mark': '写真ファイル（時計の照合で補正）',
      'by-hand': '人が入力した日時',
    },
    miss: {
      'no-photo': 'どの写真にも記入がない',
      'other-stretch': '写真はあるが、別の部分',
      'part-only': '一部しか記録がない',
      'too-few-views': '写真の枚数が足りない',
      'before-stage': '写真はあるが、必要な段階より前',
      'shows-the-covering': '写真ではもう隠れている',
      'under-protection': '写真はあるが、養生の下',
      'perhaps-under-protection': '写真はあるが、時刻の誤差により養生の下だったかもしれない',
      'after-closing': 'ふさいだ後の写真',
      'perhaps-after-closing': 'ふさぐ直前の写真で、ふさいだ後かもしれない',
      undated: '写真に日付がない',
      'before-first-day': '写真の日付が現場の初日より前',
      'after-upload': '写真の日付が取り込みより後',
      disputed: '疑義あり（要確認を参照）',
      contradicted: 'ほかの記録と食い違う（要確認を参照）',
      unreadable: '写真で部材が判別できない',
    },
    legibility: { clear: 'はっきり', weak: 'やや不鮮明', unreadable: '判別できない' },
    finding: FINDING_NAMES.ja,
    doubted: (doubt, answer) =>
      `${doubt.by}の疑義：${doubt.reason}` + (answer ? `、${answer.by ?? ''}の回答：${answer.reason}` : ''),
    accepted: (finding, by, reason) => `${finding}（${by}が認めた：${reason}）`,
    phase: HOLD_NAMES.ja,
    takenBack: (by, since, reason) => `${since}に${by}が承認を取り消し（${reason}）`,
    waived: (by, since, reason) => `${by}が認めた（${since}）：${reason}`,
    liesUnder: (name, since) => `${since}から養生の下（${name}）`,
    and: '、',
    between: (from, to) => `${from}〜${to}`,
  },
};
