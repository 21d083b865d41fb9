import type { ReactNode } from 'react';
import type { PhotoView } from '#domain/contract/views';
import type { Readings } from '#domain/contract/shapes';
import { cameraName } from '../../i18n/camera-name.ts';
import { formatBytes, formatInstant, formatNumber } from '../../i18n/format.ts';
import { useWords, type WordsInUse } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { WhereFact } from './where-fact.tsx';
import { TakenFact } from './taken-fact.tsx';
import { joinWords } from '../../i18n/join-words.ts';
import { UnreadFact } from './unread-fact.tsx';

/** What the file says of itself: when, where, with what. */
export function PhotoFacts({ photo }: { photo: PhotoView }) {
  const words = useWords();
  const { t, lang } = words;
  const { zone } = useHouse();
  const added = formatInstant(photo.addedAt, zone, lang);
  const who = photo.addedBy?.name ?? t('common.nobody');
  return (
    <section className="section">
      <h2>{t('bench.facts.title')}</h2>
      <dl className="facts">
        <Fact title={t('bench.facts.taken')}>
          <TakenFact photo={photo} />
        </Fact>
        <WhereFact photo={photo} />
        <Fact title={t('bench.facts.camera')}>{cameraText(words, photo.readings)}</Fact>
        <Fact title={t('bench.facts.file')}>
          {photo.fileName}
          <br />
          {sizeText(words, photo)}
          {photo.pictures === 'damaged' ? (
            <div className="act-text">{t('photos.picture.damaged')}</div>
          ) : null}
        </Fact>
        <UnreadFact {...photo.readings} />
        <Fact title={t('bench.facts.added')}>{t('bench.facts.addedBy', { when: added, who })}</Fact>
      </dl>
    </section>
  );
}

function Fact({ title, children }: { title: string; children: ReactNode }) {
  return (
    <>
      <dt>{title}</dt>
      <dd>{children}</dd>
    </>
  );
}

function cameraText({ t, lang }: WordsInUse, readings: Readings): string {
  const { lens, focalLengthMm: mm, focalLength35Mm: equal } = readings;
  const body = cameraName(readings);
  const focal =
    mm === null
      ? null
      : equal === null
        ? t('bench.facts.focal', { mm: round(mm) })
        : t('bench.facts.focal35', { mm: round(mm), equal: round(equal) });
  return joinWords([body, lens, focal], lang) || t('bench.facts.noCamera');
}

function sizeText({ t, lang }: WordsInUse, { width, height, bytes, mediaType }: PhotoView): string {
  return t('bench.facts.size', {
    width: formatNumber(width, lang),
    height: formatNumber(height, lang),
    size: formatBytes(bytes, lang),
    type: mediaType.replace('image/', '').toUpperCase(),
  });
}

const round = (value: number) => Math.round(value * 10) / 10;
