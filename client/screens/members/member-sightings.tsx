import { Link } from 'react-router';
import type { MemberHistoryView } from '#domain/contract/views';
import { findDoubt } from '#domain/photo/capture-doubts';
import { formatInstant } from '../../i18n/format.ts';
import { reasonWords } from '../../i18n/taken-back.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { RivalsNote } from '../bench/rivals-note.tsx';
import { briefFlag } from '../photos/capture-sentence.ts';
import { rivalsOf } from '../bench/rivals.ts';

type Sighting = MemberHistoryView['sightings'][number];

export function MemberSightings({ sightings }: { sightings: readonly Sighting[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (sightings.length === 0) {
    const action = <LinkButton to={`/houses/${house}/photos`}>{t('members.history.toPhotos')}</LinkButton>;
    return (
      <EmptyState title={t('members.history.photosNone')} action={action}>
        {t('members.history.photosNoneText')}
      </EmptyState>
    );
  }
  const rivals = rivalsOf(sightings.map(({ tag }) => tag));
  const cards = (some: readonly Sighting[]) => (
    <ul className="sightings plain-list">
      {some.map((sighting) => (
        <li key={sighting.tag.id}>
          <SightingCard sighting={sighting} rivals={rivals.get(sighting.tag.id) ?? []} />
        </li>
      ))}
    </ul>
  );
  const standing = sightings.filter(({ tag }) => tag.state === 'standing');
  const ended = sightings.filter(({ tag }) => tag.state !== 'standing');
  return (
    <>
      {standing.length > 0 ? cards(standing) : <p>{t('members.history.allEnded')}</p>}
      {ended.length > 0 ? (
        <details className="disclosure">
          <summary>{t('members.history.ended', { count: ended.length })}</summary>
          {cards(ended)}
        </details>
      ) : null}
    </>
  );
}

interface SightingCardProps {
  sighting: Sighting;
  rivals: readonly Sighting['tag'][];
}

function SightingCard({ sighting: { tag, fileName, capture, crop }, rivals }: SightingCardProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const brief = briefFlag(capture);
  const when = (instant: string) => formatInstant(instant, zone, lang);
  const stage = t(`common.stage.${tag.stage}`);
  const alt = t('members.history.cropAlt', { mark: tag.mark, file: fileName, stage });
  return (
    <article className={tag.state === 'standing' ? 'sighting' : 'sighting sighting-ended'}>
      <Link className="sighting-crop" to={`/houses/${house}/photos/${tag.photo}`}>
        <img src={crop} alt={alt} loading="lazy" decoding="async" />
      </Link>
      <StageName stage={tag.stage} />
      {tag.stretch ? <p>{t('bench.stretch.shown', tag.stretch)}</p> : null}
      {capture.state === 'dated' ? (
        <p>
          {t('members.history.taken', { when: when(capture.instant) })}
          {brief === null ? null : <span className="soft"> {t(`clock.brief.${brief}`)}</span>}
        </p>
      ) : null}
      <WhyNoEvidence capture={capture} />
      <p>
        <LegibilityMark legibility={tag.legibility} />
      </p>
      <p className="soft">
        {t('members.history.taggedBy', { name: tag.by?.name ?? t('common.nobody'), when: when(tag.at) })}
      </p>
      {tag.note === '' ? null : <p>{tag.note}</p>}
      <RivalsNote rivals={rivals} />
      <SightingEnd tag={tag} />
    </article>
  );
}

function WhyNoEvidence({ capture }: { capture: Sighting['capture'] }) {
  const { t } = useWords();
  if (capture.state === 'undated') return <p className="act-text">{t('members.history.undated')}</p>;
  return findDoubt(capture.flags) === null ? null : (
    <p className="act-text">{t('members.history.doubted')}</p>
  );
}

function SightingEnd({ tag }: { tag: Sighting['tag'] }) {
  const { t } = useWords();
  if (tag.state === 'standing') return null;
  if (tag.state === 'superseded') return <p>{t('members.history.superseded')}</p>;
  const reason = reasonWords(t, tag.ended?.reason ?? '');
  return (
    <p>
      {reason === '' ? t('members.history.withdrawn') : t('members.history.withdrawnBecause', { reason })}
    </p>
  );
}
