import { Link } from 'react-router';
import type { JournalView } from '#domain/contract/journal-views';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { PhotoStrip } from './photo-strip.tsx';

/** What waits for somebody: one line with the ways to it. */
export function WaitingPhotos({ waiting: { untagged, undated, findings } }: Pick<JournalView, 'waiting'>) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (untagged + undated + findings === 0) return null;
  return (
    <p className="quiet-line">
      {findings > 0 ? (
        <Link className="line-link act-text" to={`/houses/${house}/findings`}>
          {t('findings.waiting', { count: findings })}
        </Link>
      ) : null}
      {untagged > 0 ? (
        <Link className="line-link" to={`/houses/${house}/photos?untagged=1`}>
          {t('days.untagged', { count: untagged })}
        </Link>
      ) : null}
      {undated > 0 ? (
        <Link className="line-link" to={`/houses/${house}/photos#undated`}>
          {t('days.undated', { count: undated })}
        </Link>
      ) : null}
    </p>
  );
}

/** Photos whose date cannot be: apart from the days, since they say nothing about the day that they name. */
export function ImpossibleDates({ waiting: { impossible } }: Pick<JournalView, 'waiting'>) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  if (impossible.photos === 0) return null;
  const told = impossible.days.reduce((sum, { photos }) => sum + photos, 0);
  return (
    <section className="section" aria-label={t('days.impossible', { count: impossible.photos })}>
      <h2>{t('days.impossible', { count: impossible.photos })}</h2>
      <p className="soft">{t('days.impossibleText')}</p>
      <ul className="plain-list">
        {impossible.days.map(({ day, doubt, photos, pictures }) => (
          <li key={`${day} ${doubt}`} className="day-row">
            <Link className="line-link" to={`/houses/${house}/days/${day}`}>
              {formatDay(day, lang)}
            </Link>
            <PhotoStrip
              photos={pictures}
              label={t('days.photosOf', { day: formatDay(day, lang) })}
              size="small"
            />
            <p>
              {t('common.count.photos', { count: photos })}{' '}
              <span className="act-text">{t(`days.doubt.${doubt}`)}</span>
            </p>
          </li>
        ))}
      </ul>
      {impossible.photos > told ? (
        <p className="soft">{t('days.impossibleMore', { count: impossible.photos - told })}</p>
      ) : null}
    </section>
  );
}
