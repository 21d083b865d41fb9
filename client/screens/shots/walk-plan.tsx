import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import { useWords } from '../../i18n/use-words.ts';
import { DOT, planOfWalk, type NumberedPlace, type Spot } from './plan-of-walk.ts';

export interface WalkPlanProps {
  grid: NonNullable<ShotListView['grid']>;
  places: readonly NumberedPlace[];
  isOpen: (shot: ShotView) => boolean;
}

/** The places of one level with their numbers and which way one looks there; the words stand in the list. */
export function WalkPlan({ grid, places, isOpen }: WalkPlanProps) {
  const { t } = useWords();
  const { width, height, upright, level, missing, spots } = planOfWalk(grid, places, isOpen);
  const left = spots.filter(({ isDone }) => !isDone);
  const walk = left.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  return (
    <figure className="walk-plan">
      <svg
        viewBox={`0 0 ${width.toFixed(1)} ${height.toFixed(1)}`}
        role="img"
        aria-label={t('shots.plan', { numbers: spots.map(({ number }) => number).join(', ') })}
      >
        {upright.map(({ label, x }) => (
          <g key={label}>
            <line className="walk-line" x1={x} x2={x} y1={22} y2={height - 12} />
            <text className="walk-label" x={x} y={15}>
              {label}
            </text>
          </g>
        ))}
        {level.map(({ label, y }) => (
          <g key={label}>
            <line className="walk-line" y1={y} y2={y} x1={26} x2={width - 12} />
            <text className="walk-label" x={13} y={y + 4.5}>
              {label}
            </text>
          </g>
        ))}
        {missing.map(({ from, to }, i) => (
          <line key={i} className="walk-missing" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
        ))}
        <polyline className="walk-way" points={walk} />
        {spots.map((spot) => (
          <SpotMark key={spot.number} spot={spot} />
        ))}
      </svg>
    </figure>
  );
}

function SpotMark({ spot: { x, y, number, turns, hasRing, isDone } }: { spot: Spot }) {
  const [near, far] = hasRing ? [DOT + 3, DOT + 13] : [DOT, DOT + 11];
  return (
    <g
      className={isDone ? 'walk-spot-done no-print' : undefined}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
    >
      {turns.map((turn) => (
        <path
          key={turn}
          className="walk-turn"
          transform={`rotate(${turn})`}
          d={`M${near} -8L${far} 0L${near} 8Z`}
        />
      ))}
      {hasRing ? <circle className="walk-ring" r={DOT + 3} /> : null}
      <circle className="walk-dot" r={DOT} />
      <text className="walk-number" y={4.5}>
        {number}
      </text>
    </g>
  );
}
