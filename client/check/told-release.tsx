import type { ToldRelease } from '#domain/verify/told-coverings';
import { shakenIn } from '#domain/verify/told-since';
import { standingWords } from './since-words.ts';
import { ToldFacts } from './told-facts.tsx';
import { RecordsSince } from './told-since.tsx';
import { placedWords, saidWords, type Speech } from './told-words.ts';

export interface ToldReleasePartProps {
  speech: Speech;
  release: ToldRelease;
  /** As the covering is called at the end of the ledger. */
  now: string;
  /** Whether it is the one on the paper in hand. */
  isNamed: boolean;
}

export function ToldReleasePart({ speech, release, now, isNamed }: ToldReleasePartProps) {
  const { t } = speech;
  const { name, seq, members, takenBack, ended, since, note } = release;
  const fate = takenBack ? 'takenBack' : ended ? 'ended' : null;
  const isSound = fate === null && shakenIn(since).length === 0;
  return (
    <section className={isNamed ? 'check-told-said check-told-named' : 'check-told-said'}>
      <h4>
        {t('check.told.release')}{' '}
        <span className={isSound ? 'soft' : 'act-text'}>
          {fate === null ? standingWords(t, since) : t(`check.told.${fate}`)}
        </span>
      </h4>
      {isNamed ? <p>{t('check.told.named')}</p> : null}
      <ToldFacts
        facts={[
          [t('check.told.releasedBy'), saidWords(speech, release)],
          ended && [t('check.told.endedBy'), placedWords(speech, ended)],
          takenBack && [
            t('check.told.takenBackBy'),
            t('check.told.withReason', { said: placedWords(speech, takenBack), reason: takenBack.reason }),
          ],
          since.length === 0
            ? null
            : [t('check.told.since'), <RecordsSince {...{ speech, since }} isStanding={fate === null} />],
          [t('check.guide.number'), <span className="hash">{release.release}</span>],
          [t('check.guide.entry'), t('check.guide.entryNo', { number: seq + 1 })],
          name === now ? null : [t('check.told.calledThen'), name],
          [t('check.told.accepted'), <AcceptedGaps speech={speech} release={release} />],
          [
            t('check.told.hides'),
            members.length === 0 ? t('common.none') : <Hidden {...{ speech, members }} />,
          ],
          note === '' ? null : [t('check.told.note'), note],
        ]}
      />
    </section>
  );
}

function AcceptedGaps({ speech: { t }, release: { accepted } }: { speech: Speech; release: ToldRelease }) {
  if (accepted.length === 0) return t('common.none');
  return (
    <ul className="plain-list">
      {accepted.map(({ mark, reason }) => (
        <li key={mark}>{t('check.told.gap', { mark, reason })}</li>
      ))}
    </ul>
  );
}

/** Folded away: a floor hides hundreds. */
function Hidden({ speech: { t }, members }: { speech: Speech; members: ToldRelease['members'] }) {
  return (
    <details>
      <summary>{t('common.count.members', { count: members.length })}</summary>
      <ul className="plain-list">
        {members.map(({ mark, tags, isHiddenBefore }) => (
          <li key={mark}>
            {t('check.told.member', {
              mark,
              records: isHiddenBefore
                ? t('check.told.hiddenBefore')
                : t('check.told.records', { count: tags.length }),
            })}
          </li>
        ))}
      </ul>
    </details>
  );
}
