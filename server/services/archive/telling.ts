import type { Standing } from '#domain/contract/hold';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { Person, Role } from '#domain/contract/shapes';
import { groupBy } from '#domain/group-by';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { nameOfKind } from '#domain/lexicon/name-of-kind';
import { SHEET_WORDS_EN } from '#domain/record/sheet/sheet-words-en';
import { SHEET_WORDS_JA } from '#domain/record/sheet/sheet-words-ja';
import { dayOf } from '#domain/record/zoned-day';
import { REPORT_WORDS, type ReportWords } from '../report-words.ts';
import { toldDay, toldTime } from '../told-time.ts';
import type { ArchiveMaterial, ArchivedTag, StoryEntry } from './archive-material.ts';
import { doubtsIn, type DoubtSaid } from './doubts.ts';
import { PAGE_WORDS, type PageWords } from './page-words.ts';
import { roleFinder, rolesIn, type RoleEntry } from './roles.ts';

type ReportedCovering = ClosingReportView['days'][number]['coverings'][number];
/** A line of the closing report, as the page tells what is hidden. */
export type Line = ReportedCovering['lines'][number];

interface AcceptedUnder {
  readonly mark: string;
  readonly covering: string;
  readonly name: string;
  readonly waiver: NonNullable<Line['waiver']>;
}

/** What the parts of the page in an archive have in common. */
export interface Telling {
  readonly material: ArchiveMaterial;
  readonly words: PageWords;
  /** Those of the closing report. */
  readonly report: ReportWords;
  readonly role: Readonly<Record<Role, string>>;
  /** In the house's zone, to the minute. */
  readonly local: (instant: string) => string;
  /** Its day there, YYYY-MM-DD. */
  readonly day: (instant: string) => string;
  /** A day in words. */
  readonly dayWords: (day: string) => string;
  readonly who: (person: Person | null) => string;
  /** Whoever said an entry, in the role of then. */
  readonly speaker: (said: Pick<StoryEntry, 'seq' | 'by'>) => string;
  /** A kind of members by its names; one that is not known as the schedule writes it. */
  readonly memberKind: (kind: string) => string;
  readonly roles: readonly RoleEntry[];
  /** Covering → what it hides. */
  readonly linesOf: ReadonlyMap<string, readonly Line[]>;
  /** Covering → where it stands with its inspection, as that is worked out today. */
  readonly standingOf: ReadonlyMap<string, Standing>;
  /** Mark → the coverings under which it may go without a record, with whose word that is. */
  readonly acceptedOf: ReadonlyMap<string, readonly AcceptedUnder[]>;
  readonly doubts: readonly DoubtSaid[];
  readonly doubtsOf: ReadonlyMap<string, readonly DoubtSaid[]>;
  readonly tagsOn: ReadonlyMap<string, readonly ArchivedTag[]>;
  readonly tagsOf: ReadonlyMap<string, readonly ArchivedTag[]>;
}

const ROLE_WORDS = { en: SHEET_WORDS_EN, ja: SHEET_WORDS_JA };

export function tell(material: ArchiveMaterial, report: ClosingReportView, lang: 'en' | 'ja'): Telling {
  const words = PAGE_WORDS[lang];
  const { zone } = material.house;
  const { tags } = material.tables;
  const [doubts, roles] = [doubtsIn(material.story), rolesIn(material.story)];
  const coverings = report.days.flatMap((day) => day.coverings);
  return {
    ...{ material, words, doubts, roles },
    report: REPORT_WORDS[lang],
    role: ROLE_WORDS[lang].role,
    local: (instant) => toldTime(instant, zone, lang),
    day: (instant) => dayOf(instant, zone),
    dayWords: (day) => toldDay(day, lang),
    who: (person) => words.by(person?.name ?? words.program),
    speaker: speakerIn(words, lang, roles),
    memberKind: (written) => {
      const known = kindIn(material.lexicon, written);
      return known ? nameOfKind(known, lang) : written;
    },
    linesOf: new Map(coverings.map(({ id, lines }) => [id, lines])),
    standingOf: new Map(coverings.map(({ id, standing }) => [id, standing])),
    acceptedOf: groupBy(coverings.flatMap(acceptedUnder), ({ mark }) => mark),
    doubtsOf: groupBy(doubts, ({ tag }) => tag),
    tagsOn: groupBy(tags, ({ photo }) => photo),
    tagsOf: groupBy(tags, ({ mark }) => mark),
  };
}

function acceptedUnder({ id, name, lines }: ReportedCovering): AcceptedUnder[] {
  return lines.flatMap(({ mark, waiver }) => (waiver ? [{ mark, covering: id, name, waiver }] : []));
}

function speakerIn(words: PageWords, lang: 'en' | 'ja', roles: readonly RoleEntry[]): Telling['speaker'] {
  const roleOf = roleFinder(roles);
  const { person, role } = ROLE_WORDS[lang];
  return ({ seq, by }) => {
    if (by === null) return words.by(words.program);
    const held = roleOf(by.id, seq);
    return words.by(held === null ? by.name : person(by.name, role[held]));
  };
}
