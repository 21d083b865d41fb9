import { useMemo } from 'react';
import { Link } from 'react-router';
import type { ShotListView, ShotPlaceView } from '#domain/contract/shot-views';
import { groupBy } from '#domain/group-by';
import { formatInstant, formatList } from '../../i18n/format.ts';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { PageMargins } from '../report/page-margins.tsx';
import type { Days } from './kept-walk.ts';
import { LeftOver } from './left-over.tsx';
import { ShotPlace } from './shot-place.tsx';
import { onPaper, type AboutShots } from './shot-row.tsx';
import { addedSince, allShots, askedIn, closedSince, stateOfShot, type ShotState } from './taken-since.ts';
import { useWalk } from './use-walk.ts';
import { WalkPlan } from './walk-plan.tsx';

export function Walk({ days }: { days: Days }) {
  const { id: house } = useHouse();
  const { query, walk, order } = useWalk(house, days);
  return (
    <QueryState query={query}>
      {(now) => (walk ? <Ordered walk={walk} now={now} days={days} order={order} /> : null)}
    </QueryState>
  );
}

interface OrderedProps {
  walk: ShotListView;
  now: ShotListView;
  days: Days;
  order: () => void;
}

function Ordered({ walk, now, days, order }: OrderedProps) {
  const { t, lang } = useWords();
  const { id: house, name, zone } = useHouse();
  const lexicon = useLexicon();
  const shots = useMemo(() => allShots(walk), [walk]);
  const asked = useMemo(() => askedIn(now), [now]);
  const states = useMemo(
    () => new Map(shots.map((shot) => [shot, stateOfShot(shot, asked)])),
    [shots, asked],
  );
  const about: AboutShots = {
    ...{ walk, now, asked, withReading: firstOfKind(shots, lexicon) },
    isOpen: (shot) => states.get(shot) === 'open',
  };
  const count = (state: ShotState) => [...states.values()].filter((one) => one === state).length;
  const [done, lost, unasked] = [count('on-record'), count('lost'), count('unasked')];
  const closed = useMemo(() => closedSince(walk, now), [walk, now]);
  const added = useMemo(() => addedSince(walk, now), [walk, now]);
  const when = formatInstant(walk.asOf, zone, lang);
  return (
    <div className="stack shots">
      <PageMargins left={name} right={t('report.asOf', { when })} />
      {walk.grid === null && shots.length > 0 ? (
        <Notice>
          {t('shots.noGrid')}{' '}
          <IfMay act="record">
            <Link className="line-link" to={`/houses/${house}/grid`}>
              {t('shots.toGrid')}
            </Link>
          </IfMay>
        </Notice>
      ) : null}
      {shots.length === 0 ? (
        <Notice tone="done">{days === 'all' ? t('shots.nothingAtAll') : t('shots.nothing')}</Notice>
      ) : (
        <>
          <div className="row shots-progress">
            <p role="status">
              <strong>{t('shots.progress', { done, total: shots.length - unasked })}</strong>
              {lost > 0 ? <span className="act-text"> {t('shots.lost', { count: lost })}</span> : null}
              {unasked > 0 ? <span> {t('shots.unasked', { count: unasked })}</span> : null}
              {added > 0 ? <span className="act-text"> {t('shots.added', { count: added })}</span> : null}
            </p>
            {count('open') < shots.length || added + closed.length > 0 ? (
              <span className="no-print">
                <Button onPress={order}>{t('shots.order')}</Button>
              </span>
            ) : null}
          </div>
          {closed.length > 0 ? (
            <div className="no-print">
              <Notice>
                {t('shots.closedSince', { count: closed.length, names: formatList(closed, lang) })}
              </Notice>
            </div>
          ) : null}
          <p className="soft no-print">{t('shots.since', { when })}</p>
          <p className="shots-caution">{t('shots.caution')}</p>
          <p className="shots-paper">
            <strong>{t('report.printedFor', { house: name, when })}</strong> {t('shots.tickHint')}
          </p>
        </>
      )}
      {shots.length === 0 && added > 0 ? <Button onPress={order}>{t('shots.order')}</Button> : null}
      <Levels about={about} />
      <LeftOver about={about} />
      {walk.places.length > 0 ? <p className="soft shots-known">{t('shots.known')}</p> : null}
      {walk.later > 0 && days !== 'all' ? (
        <p className="no-print">
          {t('shots.later', { count: walk.later })}{' '}
          <Link className="line-link" to="?days=all">
            {t('shots.showAll')}
          </Link>
        </p>
      ) : null}
    </div>
  );
}

const shotsAt = (places: readonly { place: ShotPlaceView }[]) =>
  places.flatMap(({ place }) => place.turns.flatMap(({ shots }) => shots));

/** The places level by level, numbered through. */
function Levels({ about }: { about: AboutShots }) {
  const { t } = useWords();
  const { places, grid } = about.walk;
  if (!grid) return null;
  const numbered = places.map((place, i) => ({ place, number: i + 1 }));
  return [...groupBy(numbered, ({ place }) => place.level)].map(([level, own]) => (
    <section key={level ?? ''} className={`section ${onPaper(shotsAt(own), about)}`}>
      <h2>{level === null ? t('shots.noLevel') : t('shots.level', { level })}</h2>
      <div className="walk-level">
        <div className="walk-aside">
          <WalkPlan grid={grid} places={own} isOpen={about.isOpen} />
          <p className="soft walk-key">{t('shots.planKey')}</p>
        </div>
        <ol className="plain-list">
          {own.map(({ place, number }) => (
            <ShotPlace key={number} place={place} number={number} grid={grid} about={about} />
          ))}
        </ol>
      </div>
    </section>
  ));
}
