import { useMemo } from 'react';
import { Link } from 'react-router';
import type { ShotListView } from '#domain/contract/shot-views';
import { groupBy } from '#domain/group-by';
import { formatInstant } from '../../i18n/format.ts';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { PageMargins } from '../report/page-margins.tsx';
import type { Days } from './kept-walk.ts';
import { LeftOver } from './left-over.tsx';
import { ShotPlace } from './shot-place.tsx';
import type { AboutShots } from './shot-row.tsx';
import { addedSince, allShots, isTaken, missingIn } from './taken-since.ts';
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
  const missing = useMemo(() => missingIn(now), [now]);
  const about: AboutShots = {
    walk,
    withReading: firstOfKind(shots, lexicon),
    isTaken: (shot) => isTaken(shot, missing),
  };
  const done = shots.filter(about.isTaken).length;
  const added = useMemo(() => addedSince(walk, now), [walk, now]);
  const when = formatInstant(walk.asOf, zone, lang);
  return (
    <div className="stack shots">
      <PageMargins left={name} right={t('report.asOf', { when })} />
      {walk.grid === null && shots.length > 0 ? (
        <Notice>
          {t('shots.noGrid')}{' '}
          <Link className="line-link" to={`/houses/${house}/grid`}>
            {t('shots.toGrid')}
          </Link>
        </Notice>
      ) : null}
      {shots.length === 0 ? (
        <Notice tone="done">{days === 'all' ? t('shots.nothingAtAll') : t('shots.nothing')}</Notice>
      ) : (
        <>
          <div className="row shots-progress">
            <p role="status">
              <strong>{t('shots.progress', { done, total: shots.length })}</strong>
              {added > 0 ? <span className="act-text"> {t('shots.added', { count: added })}</span> : null}
            </p>
            {done + added > 0 ? (
              <span className="no-print">
                <Button onPress={order}>{t('shots.order')}</Button>
              </span>
            ) : null}
          </div>
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

/** The places level by level, numbered through. */
function Levels({ about }: { about: AboutShots }) {
  const { t } = useWords();
  const { places, grid } = about.walk;
  if (!grid) return null;
  const numbered = places.map((place, i) => ({ place, number: i + 1 }));
  return [...groupBy(numbered, ({ place }) => place.level)].map(([level, own]) => (
    <section key={level ?? ''} className="section">
      <h2>{level === null ? t('shots.noLevel') : t('shots.level', { level })}</h2>
      <div className="walk-level">
        <div className="walk-aside">
          <WalkPlan grid={grid} places={own} />
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
