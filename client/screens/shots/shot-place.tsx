import { Link } from 'react-router';
import type { ShotListView, ShotPlaceView, ShotView } from '#domain/contract/shot-views';
import { daysBetween } from '#domain/record/days-between';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { DaysLeft } from '../coverings/days-left.tsx';
import { lookWords, whereWords } from './place-words.ts';
import { keyOfShot, onPaper, ShotRow, type AboutShots } from './shot-row.tsx';
import { stateFor } from './taken-since.ts';

export interface ShotPlaceProps {
  place: ShotPlaceView;
  number: number;
  grid: NonNullable<ShotListView['grid']>;
  about: AboutShots;
}

/** On paper a place of so few rows stays on one page. */
const KEPT_WHOLE = 8;

/** When the first of what is still to be photographed is hidden. */
function firstDay(open: readonly ShotView[], { walk, now, asked }: AboutShots): string | null {
  const left = open.flatMap((shot) => shot.coverings.filter((id) => stateFor(id, shot, asked) === 'open'));
  const days = [
    ...now.coverings,
    ...walk.coverings.filter((one) => !now.coverings.some(({ id }) => id === one.id)),
  ]
    .filter(({ id }) => left.includes(id))
    .flatMap(({ plannedDay }) => plannedDay ?? []);
  return days.sort()[0] ?? null;
}

/** One place to stand: where that is, what it stands on, and what is seen from there, way by way. */
export function ShotPlace({ place, number, grid, about }: ShotPlaceProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const { turns } = place;
  const open = turns.flatMap(({ shots }) => shots).filter(about.isOpen);
  const isDone = open.length === 0;
  const closes = isDone ? place.closes : firstDay(open, about);
  return (
    <li
      className={`shot-place${open.length <= KEPT_WHOLE ? ' keep-together' : ''}${isDone ? ' shot-place-done no-print' : ''}`}
    >
      <h3>
        <span className="shot-number" aria-hidden="true">
          {number}
        </span>
        <span className="out-of-sight">{t('shots.place', { number })}</span> {whereWords(t, place, grid)}
      </h3>
      <Underfoot place={place} />
      {closes === null ? null : (
        <p className="row shot-when">
          <span>{formatDay(closes, lang)}</span>
          <DaysLeft days={daysBetween(about.walk.today, closes)} isCalm={isDone} />
        </p>
      )}
      {turns.map(({ look, shots }) => (
        <section key={JSON.stringify(look)} className={onPaper(shots, about)}>
          <h4>{lookWords(t, look)}</h4>
          <ul className="plain-list">
            {shots.map((shot) => (
              <ShotRow key={keyOfShot(shot)} shot={shot} about={about} />
            ))}
          </ul>
        </section>
      ))}
      <p>
        <Link
          className="alone"
          to={`/houses/${house}/photos`}
          aria-label={`${t('shots.addPhotos')}: ${t('shots.place', { number })}`}
        >
          {t('shots.addPhotos')}
        </Link>
      </p>
    </li>
  );
}

function Underfoot({ place: { footing, before } }: { place: ShotPlaceView }) {
  const { t } = useWords();
  if (footing !== 'none') return null;
  return <p className="shot-underfoot">{before?.outside ? t('shots.noGround') : t('shots.noFloor')}</p>;
}
