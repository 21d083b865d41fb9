import type { Standing } from '#domain/contract/hold';
import { formatList } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

/** Of members that a release does not cover any more so many are named; the rest is counted. */
const NAMED = 12;

/** That a release does not cover what is hidden or missing now, and of which members. */
export function outrunWords(
  t: Words,
  lang: Language,
  { beyond }: Pick<Standing, 'beyond'>,
  said: { when: string; who: string },
): string {
  return t('hold.outrun', { ...said, count: beyond.length, marks: beyondMarks(t, lang, beyond) });
}

export function beyondMarks(t: Words, lang: Language, beyond: readonly string[]): string {
  const named = beyond.slice(0, NAMED);
  const more = beyond.length - named.length;
  if (more === 0) return formatList(named, lang);
  return joinWords([...named, t('coverings.andMore', { count: more })], lang);
}
