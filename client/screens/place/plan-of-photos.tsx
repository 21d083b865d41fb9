import { useState } from 'react';
import { Link } from 'react-router';
import type { PhotoPlaceView } from '#domain/contract/views';
import { middlePosition } from '#domain/place/middle-position';
import { formatInstant } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { SitePlan } from '../../parts/site-plan.tsx';
import { PlanLegend } from './plan-legend.tsx';
import { marksOf } from './plan-marks.ts';
import { planWords } from './place-words.ts';
import './plan.css';
import type { PlainHouse } from '../../shell/use-house.ts';

const ROWS = 200;

/** The plan and, beside it, the same in words; what a row tells of stands out on the plan. */
export function PlanOfPhotos({ house, photos }: { house: PlainHouse; photos: readonly PhotoPlaceView[] }) {
  const { t } = useWords();
  const [chosen, setChosen] = useState<string | null>(null);
  const { site } = house;
  const marks = photos.flatMap(({ id, place }) => marksOf(id, place));
  const middle = site ?? middlePosition(marks.map(({ at }) => at));
  if (!middle) return null;
  return (
    <>
      <p role="status">{useCounts(photos)}</p>
      {site ? null : <p className="soft">{t('place.plan.noSite')}</p>}
      <div className="plan-columns">
        <div className="stack">
          <SitePlan middle={middle} site={site} marks={marks} chosen={chosen} label={t('place.plan.label')} />
          <PlanLegend site={site} />
        </div>
        <ul className="plain-list plan-list" aria-label={t('place.plan.list')}>
          {photos.slice(0, ROWS).map((photo) => (
            <PlanRow key={photo.id} house={house} photo={photo} onChoose={setChosen} />
          ))}
          {photos.length > ROWS ? (
            <li className="soft">{t('place.plan.more', { count: photos.length - ROWS })}</li>
          ) : null}
        </ul>
      </div>
    </>
  );
}

interface PlanRowProps {
  readonly house: PlainHouse;
  readonly photo: PhotoPlaceView;
  readonly onChoose: (photo: string | null) => void;
}

function PlanRow({ house: { id, site, zone }, photo, onChoose }: PlanRowProps) {
  const { t, lang } = useWords();
  const { capturedAt, place, fileName } = photo;
  return (
    <li onPointerEnter={() => onChoose(photo.id)} onFocus={() => onChoose(photo.id)}>
      <Link className="alone" to={`/houses/${id}/photos/${photo.id}`}>
        {joinWords([capturedAt ? formatInstant(capturedAt, zone, lang) : null, fileName], lang)}
      </Link>
      <p className="plan-row-words">
        {place.site ? (
          <strong className={place.site.verdict === 'off-site' ? 'act-text' : undefined}>
            {t(`place.verdict.${place.site.verdict}`)}
            {lang === 'ja' ? '：' : ': '}
          </strong>
        ) : null}
        {planWords(t, lang, place, site)}
      </p>
    </li>
  );
}

function useCounts(photos: readonly PhotoPlaceView[]): string {
  const { t, lang } = useWords();
  const count = (verdict: string) => photos.filter(({ place }) => place.site?.verdict === verdict).length;
  const told = [
    ['place.plan.onSite', count('on-site')],
    ['place.plan.offSite', count('off-site')],
    ['place.plan.cannotTell', count('cannot-tell')],
  ] as const;
  const withPosition = photos.filter(({ place }) => place.position).length;
  return joinWords(
    [
      t('place.plan.shown', { count: withPosition }),
      ...told.map(([key, n]) => (n > 0 ? t(key, { n }) : null)),
    ],
    lang,
  );
}
