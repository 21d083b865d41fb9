import type { ClosingReportView } from '#domain/contract/report-views';
import { formatList } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { knownTime } from './known-time.ts';

type Line = ClosingReportView['days'][number]['coverings'][number]['lines'][number];

/** Why a member has no record: what came nearest to one, and what is wrong with it. Empty where it has one. */
export function missSentence(t: Words, lang: Language, zone: string, line: Line): string {
  const [main, ...others] = line.nearestMiss?.reasons ?? [];
  if (main === undefined) return '';
  const least = t(`common.stage.${line.least}`);
  const seen = seenText(t, lang, zone, line);
  const first = t(`report.${line.state === 'lost' ? 'lost' : 'miss'}.${main}`, { least, seen });
  if (others.length === 0) return first;
  // Of a record that counts, and is not enough: the doubt is of another.
  if (main === 'part-only' || main === 'too-few-views') return t('report.miss.alsoDoubted', { first });
  const rest = others.map((reason) => t(`report.miss.and.${reason}`, { least }));
  return t('report.miss.joined', { first, rest: formatList(rest, lang) });
}

/** The stage and time of the photo that came nearest. */
function seenText(t: Words, lang: Language, zone: string, { nearestMiss }: Line): string {
  const tag = nearestMiss?.tag;
  if (!tag) return '';
  const stage = t(`common.stage.${tag.stage}`);
  // That it has no date is one of the reasons.
  if (tag.instant === null) return stage;
  return t('report.record', { stage, when: knownTime(t, lang, zone, tag) });
}
