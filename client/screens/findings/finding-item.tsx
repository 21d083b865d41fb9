import { useState } from 'react';
import { Link } from 'react-router';
import type { FindingView } from '#domain/contract/findings';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Thumb } from '../../parts/thumb.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { AcceptDialog } from './accept-dialog.tsx';
import { findingSentence } from './finding-sentence.ts';
import { findingWays } from './finding-ways.ts';
import { FindingTags } from './finding-tags.tsx';
import { useReopen } from './use-findings.ts';

export interface FindingItemProps {
  finding: FindingView;
  /** Without pictures, where the photo is on the screen already. */
  isBrief?: boolean;
}

/** What does not fit, of which photos and tags, where it can be put right, and the answer to it. */
export function FindingItem({ finding, isBrief = false }: FindingItemProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const sentence = findingSentence(t, lang, zone, finding);
  const ways = findingWays(house, finding);
  return (
    <article className="finding">
      {isBrief ? null : <FindingPhotos finding={finding} />}
      <div className="finding-text">
        <p>{sentence}</p>
        {isBrief ? <p className="soft">{t(`findings.todo.${finding.kind}`)}</p> : null}
        <FindingTags finding={finding} />
        <FindingAnswer finding={finding} />
        <div className="row">
          {ways.map(({ word, to }) => (
            <Link key={word} className="line-link" to={to}>
              {t(`findings.way.${word}`)}
            </Link>
          ))}
          <FindingActs finding={finding} sentence={sentence} />
        </div>
      </div>
    </article>
  );
}

function FindingPhotos({ finding: { shown, tags } }: { finding: FindingView }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  if (shown.length === 0) return null;
  return (
    <ul className="plain-list finding-photos">
      {shown.map((photo) => {
        const tag = tags.find((one) => one.photo === photo.id);
        const name =
          photo.instant === null
            ? t('findings.photoUndated', { file: photo.fileName })
            : formatInstant(photo.instant, zone, lang);
        return (
          <li key={photo.id}>
            <Link to={`/houses/${house}/photos/${photo.id}${tag ? `?tag=${tag.tag}` : ''}`}>
              <Thumb photo={photo} alt="" />
              <span>{name}</span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}

function FindingAnswer({ finding: { answer } }: { finding: FindingView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (!answer) return null;
  const said = {
    who: answer.by?.name ?? t('common.nobody'),
    when: formatInstant(answer.at, zone, lang),
    reason: answer.reason,
  };
  return <p>{t(answer.stands ? 'findings.wasAccepted' : 'findings.wasAcceptedBefore', said)}</p>;
}

function FindingActs({ finding, sentence }: { finding: FindingView; sentence: string }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [isAsking, setIsAsking] = useState(false);
  const reopen = useReopen(house, finding);
  if (finding.answer?.stands)
    return (
      <>
        <Button
          look="quiet"
          isPending={reopen.isPending}
          aria-label={t('findings.takeBackNamed', { what: sentence })}
          onPress={() => reopen.mutate(undefined)}
        >
          {t('findings.takeBack')}
        </Button>
        <ProblemNotice error={reopen.error} />
      </>
    );
  return (
    <>
      <Button aria-label={t('findings.acceptNamed', { what: sentence })} onPress={() => setIsAsking(true)}>
        {t('findings.accept')}
      </Button>
      {isAsking ? <AcceptDialog findings={[finding]} onClose={() => setIsAsking(false)} /> : null}
    </>
  );
}
