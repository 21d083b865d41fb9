import { Temporal } from 'temporal-polyfill';
import type { Person } from '#domain/contract/shapes';
import { groupBy } from '#domain/group-by';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { nameOfKind } from '#domain/lexicon/name-of-kind';
import { dayOf } from '#domain/record/zoned-day';
import { REPORT_WORDS, type ReportWords } from '../report-words.ts';
import type { ArchiveMaterial, ArchivedTag } from './archive-material.ts';
import { doubtsIn, type DoubtSaid } from './doubts.ts';
import { PAGE_WORDS, type PageWords } from './page-words.ts';

/** What the parts of the page in an archive have in common. */
export interface Telling {
  readonly material: ArchiveMaterial;
  readonly words: PageWords;
  readonly stage: ReportWords['stage'];
  readonly kind: ReportWords['kind'];
  /** In the house's zone, to the minute. */
  readonly local: (instant: string) => string;
  /** Its day there. */
  readonly day: (instant: string) => string;
  readonly who: (person: Person | null) => string;
  /** A kind of members by its names; one that is not known as the schedule writes it. */
  readonly memberKind: (kind: string) => string;
  readonly doubts: readonly DoubtSaid[];
  readonly doubtsOf: ReadonlyMap<string, readonly DoubtSaid[]>;
  readonly tagsOn: ReadonlyMap<string, readonly ArchivedTag[]>;
  readonly tagsOf: ReadonlyMap<string, readonly ArchivedTag[]>;
}

export function tell(material: ArchiveMaterial, lang: 'en' | 'ja'): Telling {
  const words = PAGE_WORDS[lang];
  const { tags } = material.tables;
  const doubts = doubtsIn(material.story);
  return {
    ...{ material, words, stage: REPORT_WORDS[lang].stage, kind: REPORT_WORDS[lang].kind },
    local: (instant) => localTime(instant, material.house.zone),
    day: (instant) => dayOf(instant, material.house.zone),
    who: (person) => words.by(person?.name ?? words.program),
    memberKind: (written) => {
      const known = kindIn(material.lexicon, written);
      return known ? nameOfKind(known, lang) : written;
    },
    doubts,
    doubtsOf: groupBy(doubts, ({ tag }) => tag),
    tagsOn: groupBy(tags, ({ photo }) => photo),
    tagsOf: groupBy(tags, ({ mark }) => mark),
  };
}

function localTime(instant: string, zone: string): string {
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  return `${local.toPlainDate().toString()} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
}
