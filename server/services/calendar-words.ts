import type { CalendarLang } from '#domain/contract/calendar';
import type { CoveringKind } from '#domain/contract/shapes';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { HoldPhase } from '#domain/record/hold-phase';
import { REPORT_WORDS } from './report-words.ts';

export type CalendarCovering = ClosingReportView['days'][number]['coverings'][number];

/** So many gaps are named in an entry; the rest is counted. */
const NAMED = 12;

interface Words {
  readonly calendar: (house: string) => string;
  readonly title: (name: string, standing: string) => string;
  readonly noDay: string;
  readonly closed: string;
  readonly lost: (count: number) => string;
  /** Of what has closed: so many gaps were accepted before. */
  readonly accepted: (count: number) => string;
  readonly gaps: (count: number) => string;
  readonly empty: string;
  readonly complete: string;
  /** No gaps: the rest is accepted without a record. */
  readonly waived: (count: number) => string;
  /** Of the hold; null where nothing is said of it. */
  readonly phase: Readonly<Record<HoldPhase, string | null>>;
  readonly counted: (counts: CalendarCovering['counts']) => string;
  readonly missing: (marks: string, more: number) => string;
  readonly member: (mark: string, kind: string) => string;
  readonly and: string;
}

const WORDS: Readonly<Record<CalendarLang, Words>> = {
  en: {
    calendar: (house) => `${house}: closings`,
    title: (name, standing) => `${name}: ${standing}`,
    noDay: 'no closing day any more',
    closed: 'closed',
    lost: (count) => `closed, ${count} lost`,
    accepted: (count) => `${count} accepted without a record`,
    gaps: (count) => (count === 1 ? '1 gap' : `${count} gaps`),
    empty: 'hides nothing yet',
    complete: 'no gaps, all on record',
    waived: (count) => `no gaps, ${count} accepted without a record`,
    phase: {
      planned: null,
      ready: 'ready for inspection',
      refused: 'refused',
      released: 'released',
      outrun: 'released, but not as it stands now',
      'under-release': 'under release',
      'under-taken-back': 'under a release taken back since',
      'without-release': 'without release',
    },
    counted: ({ hidden, onRecord, gaps, lost, waived }) =>
      `Members hidden: ${hidden}. On record: ${onRecord}. Gaps: ${gaps}. Lost: ${lost}.` +
      (waived > 0 ? ` Accepted without a record: ${waived}.` : ''),
    missing: (marks, more) => `Without a record: ${marks}${more > 0 ? ` and ${more} more` : ''}.`,
    member: (mark, kind) => (kind === '' ? mark : `${mark} (${kind})`),
    and: ', ',
  },
  ja: {
    calendar: (house) => `${house}：ふさぎ工事`,
    title: (name, standing) => `${name}：${standing}`,
    noDay: 'ふさぐ日は未定に戻った',
    closed: 'ふさぎ済み',
    lost: (count) => `ふさぎ済み、記録なしで隠蔽${count}本`,
    accepted: (count) => `記録なしで認めた部材${count}本`,
    gaps: (count) => `未記録${count}本`,
    empty: '隠れる部材は未定',
    complete: '未記録なし、すべて記録あり',
    waived: (count) => `未記録なし、記録なしで認めた部材${count}本`,
    phase: {
      planned: null,
      ready: '検査待ち',
      refused: '差し戻し',
      released: '承認済み',
      outrun: '承認後に変わり再検査が必要',
      'under-release': '承認あり',
      'under-taken-back': '承認は後に取り消し',
      'without-release': '承認なし',
    },
    counted: ({ hidden, onRecord, gaps, lost, waived }) =>
      `隠れる部材 ${hidden}本、記録あり ${onRecord}本、未記録 ${gaps}本、記録なしで隠蔽 ${lost}本` +
      (waived > 0 ? `、記録なしで認めた部材 ${waived}本` : ''),
    missing: (marks, more) => `記録のない部材：${marks}${more > 0 ? `、ほか${more}本` : ''}`,
    member: (mark, kind) => (kind === '' ? mark : `${mark}（${kind}）`),
    and: '、',
  },
};

/** Where a covering stands on its day: its record, then its hold. */
function standing(covering: CalendarCovering, day: string | null, words: Words): string {
  const phase = words.phase[covering.standing.phase];
  const record = recordOf(covering, day, words);
  return phase === null ? record : `${record}${words.and}${phase}`;
}

function recordOf({ closedAt, counts }: CalendarCovering, day: string | null, words: Words): string {
  if (closedAt !== null) return closedAs(counts, words);
  if (day === null) return words.noDay;
  if (counts.gaps > 0) return words.gaps(counts.gaps);
  if (counts.hidden + counts.before === 0) return words.empty;
  return counts.waived > 0 ? words.waived(counts.waived) : words.complete;
}

function closedAs({ lost, waived }: CalendarCovering['counts'], words: Words): string {
  const closed = lost > 0 ? words.lost(lost) : words.closed;
  return waived > 0 ? `${closed}${words.and}${words.accepted(waived)}` : closed;
}

/** `day` is null where a day that was told before is no longer planned. */
export function entryTitle(covering: CalendarCovering, day: string | null, lang: CalendarLang): string {
  return WORDS[lang].title(covering.name, standing(covering, day, WORDS[lang]));
}

export function entryText({ counts, lines }: CalendarCovering, address: string, lang: CalendarLang): string {
  const words = WORDS[lang];
  const missed = lines.filter(({ state }) => state === 'gap' || state === 'lost');
  const named = missed.slice(0, NAMED).map(({ mark, kind }) => words.member(mark, kind));
  return [
    words.counted(counts),
    ...(named.length > 0 ? [words.missing(named.join(words.and), missed.length - named.length)] : []),
    address,
  ].join('\n');
}

export const calendarName = (house: string, lang: CalendarLang) => WORDS[lang].calendar(house);
export const coveringKindName = (kind: CoveringKind, lang: CalendarLang) => REPORT_WORDS[lang].kind[kind];
