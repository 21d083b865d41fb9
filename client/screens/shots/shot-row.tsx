import { Link } from 'react-router';
import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import { formatList } from '../../i18n/format.ts';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';

export interface AboutShots {
  readonly walk: ShotListView;
  /** Shots whose kind is shown here for the first time. */
  readonly withReading: ReadonlySet<ShotView>;
  readonly isTaken: (shot: ShotView) => boolean;
}

/** One thing to photograph. Its tick is drawn by what comes on record, on paper by hand. */
export function ShotRow({ shot, about }: { shot: ShotView; about: AboutShots }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const isTaken = about.isTaken(shot);
  const covering = about.walk.coverings.find(({ id }) => id === shot.covering);
  const parts = shot.stretches.filter(
    ({ fromMark, toMark }) => !shot.whole || (fromMark !== null && toMark !== null && fromMark !== toMark),
  );
  return (
    <li className={isTaken ? 'shot shot-taken' : 'shot'}>
      <span className="shot-tick" aria-hidden="true">
        {isTaken ? (
          <svg viewBox="0 0 18 18">
            <path d="M3 9.5l4 4 8-9" />
          </svg>
        ) : null}
      </span>
      <div>
        <p className="shot-what">
          <Link to={`/houses/${house}/members/${encodeURIComponent(shot.mark)}`}>{shot.mark}</Link>{' '}
          <KindName kind={shot.kind} hasReading={about.withReading.has(shot)} />
        </p>
        {parts.length > 0 ? (
          <p>
            {formatList(
              parts.map((part) => stretchWords(t, lang, part)),
              lang,
            )}
          </p>
        ) : null}
        <p className="shot-needs">
          {isTaken ? (
            <strong className="shot-done">{t('shots.taken')}</strong>
          ) : (
            <>
              <StageName stage={shot.least} />
              <span>{t(`report.short.${shot.nearestMiss ?? 'no-photo'}`)}</span>
              {shot.views > 1 ? <span>{t('report.stretch.views', { count: shot.views })}</span> : null}
            </>
          )}
          {covering ? <span className="soft">{t('shots.covering', { covering: covering.name })}</span> : null}
        </p>
      </div>
    </li>
  );
}
