import { shakenIn, type ToldRecord } from '#domain/verify/told-since';
import { tagWords } from './since-words.ts';
import type { Speech } from './told-words.ts';

export interface RecordsSinceProps {
  speech: Speech;
  since: readonly ToldRecord[];
  /** Whether the release was neither taken back nor ended. */
  isStanding: boolean;
}

/** The records of a release of which something was said after it, each with these words. */
export function RecordsSince({ speech, since, isStanding }: RecordsSinceProps) {
  const { t } = speech;
  return (
    <>
      <ul className="plain-list">
        {since.map(({ tag, mark, state, said }) => (
          <li key={tag}>
            {t('check.told.ofRecord', { mark, state: t(`check.told.recordIs.${state}`) })}
            <ul>
              {said.map((word) => (
                <li key={word.seq}>{tagWords(speech, word)}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      {isStanding && shakenIn(since).length > 0 ? <p>{t('check.told.anew')}</p> : null}
    </>
  );
}
