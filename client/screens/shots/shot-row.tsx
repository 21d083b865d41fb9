import { Link } from 'react-router';
import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import { formatInstant, formatList } from '../../i18n/format.ts';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { lyingOver, stateFor, stateOfShot, type Asked, type ShotState } from './taken-since.ts';

export interface AboutShots {
  readonly walk: ShotListView;
  /** Shots whose kind is shown here for the first time. */
  readonly withReading: ReadonlySet<ShotView>;
  /** The list as it is now. */
  readonly now: ShotListView;
  readonly asked: Asked;
  readonly isOpen: (shot: ShotView) => boolean;
}

export const keyOfShot = ({ coverings, mark, least }: ShotView) => `${coverings.join(' ')} ${mark} ${least}`;

/** What is settled is left out where somebody carries paper. */
export const onPaper = (shots: readonly ShotView[], { isOpen }: AboutShots) =>
  shots.some(isOpen) ? '' : 'no-print';

const CLASS: Readonly<Record<ShotState, string>> = {
  open: 'shot',
  'on-record': 'shot shot-settled shot-taken no-print',
  lost: 'shot shot-settled shot-lost no-print',
  unasked: 'shot shot-settled no-print',
};

/** One thing to photograph. Its tick is drawn by what comes on record, on paper by hand. */
export function ShotRow({ shot, about }: { shot: ShotView; about: AboutShots }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const state = stateOfShot(shot, about.asked);
  const parts = shot.stretches.filter(
    ({ fromMark, toMark }) => !shot.whole || (fromMark !== null && toMark !== null && fromMark !== toMark),
  );
  return (
    <li className={CLASS[state]}>
      <span className="shot-tick" aria-hidden="true">
        {state === 'on-record' ? (
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
          {state === 'open' ? (
            <>
              <StageName stage={shot.least} />
              <span>{t(`report.short.${shot.nearestMiss ?? 'no-photo'}`)}</span>
              {shot.views > 1 ? <span>{t('report.stretch.views', { count: shot.views })}</span> : null}
            </>
          ) : (
            <strong className={state === 'on-record' ? 'shot-done' : undefined}>
              {t(`shots.state.${state}`)}
            </strong>
          )}
          {shot.coverings.map((id) => (
            <CoveringOf key={id} id={id} shot={shot} state={state} about={about} />
          ))}
        </p>
        {state === 'open' ? <LiesUnder shot={shot} about={about} /> : null}
      </div>
    </li>
  );
}

interface CoveringOfProps {
  id: string;
  shot: ShotView;
  /** That of the shot as a whole. */
  state: ShotState;
  about: AboutShots;
}

/** For what it is asked; where it is asked for two, how it stands for one that is settled before the other. */
function CoveringOf({ id, shot, state, about: { walk, now, asked } }: CoveringOfProps) {
  const { t } = useWords();
  const covering = (now.asked.find((one) => one.id === id) ?? walk.asked.find((one) => one.id === id))?.name;
  if (covering === undefined) return null;
  const own = stateFor(id, shot, asked);
  return (
    <span className="soft">
      {own === state || own === 'open'
        ? t('shots.covering', { covering })
        : t('shots.coveringSo', { covering, state: t(`shots.state.${own}`) })}
    </span>
  );
}

/** What must be lifted before there can be a photo. */
function LiesUnder({ shot, about: { now } }: { shot: ShotView; about: AboutShots }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const over = lyingOver(shot, now);
  if (!over) return null;
  return (
    <p className="shot-under">
      {t('protection.report', { name: over.name, when: formatInstant(over.since, zone, lang) })}
    </p>
  );
}
