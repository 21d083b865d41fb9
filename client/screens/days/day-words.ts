import type { BriefDayView } from '#domain/contract/journal-views';
import { formatList } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { CLOSED_AS, closedAs } from './closed-as.ts';

/** The members seen at one stage: the first by mark, the others counted. */
export function marksWords(t: Words, lang: Language, shown: BriefDayView['shown'][number]): string {
  const marks = joinWords(shown.marks, lang);
  const more = shown.members - shown.marks.length;
  return more > 0 ? t('days.andMore', { marks, count: more }) : marks;
}

/** What was done on a day beside what its photos show, a sentence each. */
export function asideWords(t: Words, lang: Language, day: BriefDayView): string[] {
  const { closed, inspected, members, photos, shown, tagsElsewhere } = day;
  return [
    ...inspected.map(({ what, names, count }) => {
      const more = count - names.length;
      const rest = what === 'doubted' || what === 'answered' ? 'coverings.andMore' : 'days.moreCoverings';
      const all = more > 0 ? joinWords([...names, t(rest, { count: more })], lang) : formatList(names, lang);
      return t(`days.inspected.${what}`, { names: all });
    }),
    ...CLOSED_AS.map((how) => {
      const names = closed.filter(({ phase }) => closedAs(phase) === how).map(({ name }) => name);
      return names.length === 0 ? '' : t(`days.closed.${how}`, { names: formatList(names, lang) });
    }),
    members > 0 ? t('days.fromSchedule', { count: members }) : '',
    photos > 0 && shown.length === 0 ? t('days.notTagged', { count: photos }) : '',
    tagsElsewhere > 0 ? t('days.taggedElsewhere', { count: tagsElsewhere }) : '',
  ].filter((text) => text !== '');
}

/** Who did what: whoever adds the photos is seldom who says what they show. */
export function peopleWords(t: Words, lang: Language, { addedBy, taggedBy }: BriefDayView): string {
  const both = addedBy.length > 0 && addedBy.join('\n') === taggedBy.join('\n');
  if (both) return t('days.peopleBoth', { names: formatList(addedBy, lang) });
  const parts = [
    taggedBy.length > 0 ? t('days.peopleTagged', { names: formatList(taggedBy, lang) }) : '',
    addedBy.length > 0 ? t('days.peopleAdded', { names: formatList(addedBy, lang) }) : '',
  ];
  return parts.filter((text) => text !== '').join(lang === 'ja' ? '' : ' ');
}

/** A whole day in one line of the journal. */
export function dayLine(t: Words, lang: Language, day: BriefDayView): string {
  const shown = day.shown.map((at) =>
    t('days.shown', { marks: marksWords(t, lang, at), stage: t(`common.stage.${at.stage}`) }),
  );
  const all = [shown.join(lang === 'ja' ? '、' : '; '), ...asideWords(t, lang, day)].filter(Boolean);
  // Rights given, coverings planned: the day page says what.
  if (all.length === 0 && day.statements > 0) return t('days.onlySaid', { count: day.statements });
  return all
    .map((text) => (/[.。]$/u.test(text) ? text : t('days.sentence', { text })))
    .join(lang === 'ja' ? '' : ' ');
}

/** What was done today so far, counted; empty where nothing was. */
export function countWords(t: Words, lang: Language, { photos, tags, statements }: BriefDayView): string {
  const counted = [
    photos > 0 ? t('common.count.photos', { count: photos }) : null,
    tags > 0 ? t('common.count.tags', { count: tags }) : null,
  ];
  const words = joinWords(counted, lang);
  return words === '' && statements > 0 ? t('common.count.statements', { count: statements }) : words;
}
