import type { Problem } from '#domain/contract/problems';
import { STAGES } from '#domain/frame/stage';
import { isSheetRefusal, sheetRefusalText } from '#domain/frame/sheet-refusal';
import { OfflineError, ProblemError } from '../api/errors.ts';
import { formatList } from './format.ts';
import type { Language } from './language.ts';
import type { Words } from './words.ts';

/** Values that sentences name. One that the server did not give is filled with a plain word: "this file". */
const NAMED = [
  'file',
  'found',
  'limit',
  'marks',
  'mark',
  'stage',
  'zone',
  'email',
  'covering',
  'seconds',
  'megapixels',
  'spelling',
  'other',
] as const;

/** What is wrong, where, and what to do, in the reader's language. `keepsTyped`: it came of a form that stays. */
export function problemSentence(t: Words, lang: Language, error: unknown, keepsTyped = false): string {
  if (error instanceof ProblemError) return sentenceOf(t, lang, error.problem);
  if (error instanceof OfflineError) return t(keepsTyped ? 'problems.offlineKept' : 'problems.offline');
  return t('problems.unexpected');
}

export function sentenceOf(t: Words, lang: Language, problem: Problem): string {
  const { code, params, errors = [] } = problem;
  if (code === 'schedule-unreadable' && isSheetRefusal(params['reason']))
    return sheetRefusalText({ ...params, reason: params['reason'] }, lang);
  const sentence = t(`problems.code.${code}`, { replace: fillIns(t, lang, params) });
  const fields = fieldNames(t, errors);
  if (fields.length === 0) return sentence;
  return `${sentence}${lang === 'ja' ? '' : ' '}${t('problems.fields', { fields: formatList(fields, lang) })}`;
}

/** The fields that a problem is about, as forms call them. Its messages are for scripts and in English. */
function fieldNames(t: Words, errors: NonNullable<Problem['errors']>): string[] {
  const names = t('problems.field', { returnObjects: true });
  const known = errors.flatMap(({ path }) => {
    const pieces = path.split('.');
    // Of a house it is a time zone, of a covering a space with parts.
    const isSpace = pieces.includes('zone') && pieces.at(-1) !== 'zone';
    const field = isSpace ? 'space' : pieces.findLast((piece) => Object.hasOwn(names, piece));
    return field === undefined ? [] : [names[field as keyof typeof names]];
  });
  return [...new Set(known)];
}

function fillIns(t: Words, lang: Language, params: Problem['params']): Record<string, string> {
  const values: Record<string, string> = {};
  for (const name of NAMED) values[name] = t(`problems.unstated.${name}`);
  for (const [name, value] of Object.entries(params)) {
    if (value !== '') values[name] = readable(t, lang, name, value);
  }
  return values;
}

function readable(t: Words, lang: Language, name: string, value: string | number): string {
  if (typeof value === 'number') return new Intl.NumberFormat(lang).format(value);
  const stage = name === 'stage' ? STAGES.find((s) => s === value) : undefined;
  return stage ? t(`common.stage.${stage}`) : value;
}
