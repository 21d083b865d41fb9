import { Link } from 'react-router';
import type { FindingView } from '#domain/contract/findings';
import { useSession } from '../../api/use-session.ts';
import { formatInstant } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { Words } from '../../i18n/words.ts';
import { Button } from '../../parts/button.tsx';
import { Thumb } from '../../parts/thumb.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { findingSentence } from './finding-sentence.ts';
import { findingWays } from './finding-ways.ts';
import { FindingTags } from './finding-tags.tsx';
import { answerWords } from './answer-words.ts';
import type { Answering } from './use-answering.tsx';

export interface FindingItemProps {
  finding: FindingView;
  answering: Answering;
  /** Without pictures, where the photo is on the screen already. */
  isBrief?: boolean;
  /** The member on whose screen it stands: no way leads there. */
  at?: string | undefined;
}

/** What does not fit, of which photos and tags, where it can be put right, and the answer to it. */
export function FindingItem({ finding, answering, isBrief = false, at }: FindingItemProps) {
  const { t, lang } = useWords();
  const aboutHouse = useHouse();
  const house = aboutHouse.id;
  const sentence = findingSentence(t, lang, aboutHouse, finding);
  const ways = findingWays(house, finding).filter(({ word }) => word !== 'member' || finding.marks[0] !== at);
  return (
    <article className="finding" tabIndex={-1}>
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
          <IfMay act="contribute">
            <FindingActs finding={finding} answering={answering} sentence={sentence} />
          </IfMay>
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
        return (
          <li key={photo.id}>
            <Link to={`/houses/${house}/photos/${photo.id}${tag ? `?tag=${tag.tag}` : ''}`}>
              <Thumb photo={photo} alt="" />
              <span>{photoName(t, lang, zone, photo)}</span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}

/** By its time, or where it has none by its file. */
function photoName(t: Words, lang: Language, zone: string, photo: FindingView['shown'][number]): string {
  return photo.instant === null
    ? t('findings.photoUndated', { file: photo.fileName })
    : formatInstant(photo.instant, zone, lang);
}

function FindingAnswer({ finding: { kind, answer } }: { finding: FindingView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (!answer) return null;
  const said = {
    who: answer.by?.name ?? t('common.nobody'),
    when: formatInstant(answer.at, zone, lang),
    reason: answer.reason,
  };
  const words = answerWords(kind);
  return <p>{t(`${words}.${answer.stands ? 'wasAccepted' : 'wasAcceptedBefore'}`, said)}</p>;
}

function FindingActs({ finding, sentence, answering }: FindingItemProps & { sentence: string }) {
  const { t, lang } = useWords();
  const { zone, fourEyes } = useHouse();
  const me = useSession().data?.account?.id;
  const words = answerWords(finding.kind);
  // Of many alike, each is told apart by its photos.
  const what = [sentence, ...finding.shown.map((photo) => photoName(t, lang, zone, photo))].join(' ');
  if (finding.answer?.stands)
    return (
      <Button
        look="quiet"
        aria-label={t(`${words}.takeBackNamed`, { what })}
        onPress={() => answering.reopen(finding)}
      >
        {t(`${words}.takeBack`)}
      </Button>
    );
  if (fourEyes && finding.taggedBy !== null && finding.taggedBy.id === me)
    return <span>{t('findings.doubt.own')}</span>;
  return (
    <Button aria-label={t(`${words}.acceptNamed`, { what })} onPress={() => answering.accept([finding])}>
      {t(`${words}.accept`)}
    </Button>
  );
}
