import type { Problem } from '#domain/contract/problems';
import { STAGES } from '#domain/frame/stage';
import { isSheetRefusal, sheetRefusalText } from '#domain/frame/sheet-refusal';
import { OfflineError, ProblemError } from '../api/errors.ts';
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
] as const;

/** What is wrong, where, and what to do, in the reader's language. */
export function problemSentence(t: Words, lang: Language, error: unknown): string {
  if (error instanceof ProblemError) return sentenceOf(t, lang, error.problem);
  if (error instanceof OfflineError) return t('problems.offline');
  return t('problems.unexpected');
}

export function sentenceOf(t: Words, lang: Language, problem: Problem): string {
  const { code, params, errors = [] } = problem;
  if (code === 'schedule-unreadable' && isSheetRefusal(params['reason']))
    return sheetRefusalText({ ...params, reason: params['reason'] }, lang);
  const sentence = t(`problems.code.${code}`, { replace: fillIns(t, lang, params) });
  const details = errors.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`));
  if (details.length === 0) return sentence;
  return `${sentence} ${t('problems.details', { details: details.join('; ') })}`;
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
