import type { Words } from '../i18n/words.ts';
import { paperOf, writtenIn } from './written-on-paper.ts';

/** Whoever comes by the code of a sheet wants to check that sheet, and may never have heard of archives. */
export function checkHeading(t: Words, search: URLSearchParams): { title: string; lead: string } {
  return paperOf(writtenIn(search))
    ? { title: t('check.guide.title'), lead: t('check.guide.lead') }
    : { title: t('check.title'), lead: t('check.lead') };
}
