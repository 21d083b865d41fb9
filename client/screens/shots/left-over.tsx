import { Link } from 'react-router';
import { groupBy } from '#domain/group-by';
import { useWords } from '../../i18n/use-words.ts';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { keyOfShot, onPaper, ShotRow, type AboutShots } from './shot-row.tsx';

/** What the walk does not bring: seen from no place, by the reason; without a place in space, by the schedule's places. */
export function LeftOver({ about }: { about: AboutShots }) {
  return (
    <>
      <Unseen about={about} />
      <Placeless about={about} />
    </>
  );
}

function Unseen({ about }: { about: AboutShots }) {
  const { t } = useWords();
  const { unseen } = about.walk;
  if (unseen.length === 0) return null;
  return (
    <section className={`section ${onPaper(unseen, about)}`}>
      <h2>{t('shots.unseen')}</h2>
      {[...groupBy(unseen, ({ reason }) => reason)].map(([reason, shots]) => (
        <div key={reason} className={`shot-group ${onPaper(shots, about)}`}>
          <p>{t(`shots.unseenReason.${reason}`)}</p>
          <ul className="plain-list">
            {shots.map((shot) => (
              <ShotRow key={keyOfShot(shot)} shot={shot} about={about} />
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

function Placeless({ about }: { about: AboutShots }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { placeless, grid } = about.walk;
  if (placeless.length === 0) return null;
  return (
    <section className={`section ${onPaper(placeless, about)}`}>
      {grid === null ? (
        <h2>{t('shots.byPlace')}</h2>
      ) : (
        <>
          <h2>{t('shots.placeless')}</h2>
          <p>
            {t('shots.placelessText')}{' '}
            <IfMay act="record">
              <Link className="line-link no-print" to={`/houses/${house}/schedule`}>
                {t('shots.toSchedule')}
              </Link>
            </IfMay>
          </p>
        </>
      )}
      {[...groupBy(placeless, ({ place }) => place)].map(([place, shots]) => (
        <div key={place} className={`shot-group ${onPaper(shots, about)}`}>
          <h3>{place === '' ? t('days.noPlace') : place}</h3>
          <ul className="plain-list">
            {shots.map((shot) => (
              <ShotRow key={keyOfShot(shot)} shot={shot} about={about} />
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
