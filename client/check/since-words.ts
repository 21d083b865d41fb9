import type { Stage } from '#domain/frame/stage';
import type { TagWord } from '#domain/verify/replay/state';
import { shakenIn, type ToldRecord } from '#domain/verify/told-since';
import type { Words } from '../i18n/words.ts';
import { placedWords, reasonedWords, type Speech } from './told-words.ts';

/** Of a release that was neither taken back nor ended: with what was said since of the records that it rests on. */
export function standingWords(t: Words, since: readonly ToldRecord[]): string {
  const count = shakenIn(since).length;
  if (count > 0) return t('check.told.standsBut', { count });
  return since.length === 0
    ? t('check.told.stands')
    : t('check.told.standsAnswered', { count: since.length });
}

/** What was said of a tag, by whom, when, where in the ledger and why. */
export function tagWords(speech: Speech, word: TagWord): string {
  const { t } = speech;
  if (word.what !== 'superseded')
    return t(`check.told.ofTag.${word.what}`, { said: reasonedWords(speech, word) });
  const { mark, stage } = word;
  return t('check.told.ofTag.superseded', {
    ...{ said: placedWords(speech, word), mark },
    stage: isStage(stage) ? t(`common.stage.${stage}`) : stage,
  });
}

const STAGES: Readonly<Record<Stage, true>> = {
  ...{ cut: true, raised: true, pegged: true, 'lath-on': true, plastered: true },
};
const isStage = (stage: string): stage is Stage => Object.hasOwn(STAGES, stage);
