import { Link } from 'react-router';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Thumb } from '../../parts/thumb.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { Alike } from './use-alike.ts';

export interface AlikeStripProps {
  photo: string;
  alike: Alike | undefined;
  /** Where a photo's bench is. */
  address: (photo: string) => string;
}

/** Photos that show nearly the same, with the sharpest of all of them proposed. */
export function AlikeStrip({ photo, alike, address }: AlikeStripProps) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (!alike || alike.photos.length === 0) return null;
  const { photos, sharpest } = alike;
  return (
    <section className="section bench-alike" aria-label={t('legibility.alike.title')}>
      <h2>{t('legibility.alike.title')}</h2>
      <p>
        {t('legibility.alike.lead', { count: photos.length })}{' '}
        {sharpest === photo ? t('legibility.alike.thisIs') : ''}
      </p>
      <ol className="bench-alike-photos plain-list" aria-label={t('legibility.alike.strip')}>
        {photos.map(({ id, fileName: file, instant, ...picture }) => {
          const when = instant === null ? t('legibility.alike.noTime') : formatInstant(instant, zone, lang);
          const isSharpest = id === sharpest;
          return (
            <li key={id}>
              <Link
                to={address(id)}
                aria-label={t(`legibility.alike.${isSharpest ? 'openSharpest' : 'open'}`, { file, when })}
              >
                <Thumb photo={{ id, ...picture }} alt="" />
                {isSharpest ? <span>{t('legibility.alike.sharpest')}</span> : null}
              </Link>
            </li>
          );
        })}
      </ol>
      {sharpest !== null && sharpest !== photo ? (
        <LinkButton to={address(sharpest)}>{t('legibility.alike.go')}</LinkButton>
      ) : null}
    </section>
  );
}
