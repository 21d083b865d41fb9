import type { Site } from '#domain/contract/shapes';
import { localOf, type LatLon } from '#domain/place/geodesic';
import { ahead, viewCone } from '#domain/place/view-cone';
import { useWords } from '../i18n/use-words.ts';
import { HALF, planPoint, planReach, scaleBar, type PlanMark } from './plan-layout.ts';
import './site-plan.css';

export interface SitePlanProps {
  readonly middle: LatLon;
  readonly site: Site | null;
  readonly marks: readonly PlanMark[];
  /** The same in words. */
  readonly label: string;
  readonly chosen?: string | null;
}

/** A plan from above, north up, in metres about the middle. */
export function SitePlan({ middle, site, marks, label, chosen = null }: SitePlanProps) {
  const { t } = useWords();
  const placed = marks.map((mark) => ({ ...mark, local: localOf(middle, mark.at) }));
  const radius = site?.radiusM ?? null;
  const reach = planReach(
    radius,
    placed.map(({ local }) => Math.hypot(local.eastM, local.northM)),
  );
  const { metres, part } = scaleBar(reach);
  const unit = HALF / reach;
  return (
    <div className="site-plan">
      <svg viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`} role="img" aria-label={label}>
        {radius === null ? null : <circle className="site-plan-site" r={radius * unit} />}
        <path className="site-plan-middle" d="M-4 0H4M0 -4V4" />
        {placed.map((mark) => (
          <Mark key={`${mark.kind} ${mark.id}`} mark={mark} reach={reach} length={radius ?? reach / 2} />
        ))}
        {placed
          .filter(({ id }) => id === chosen)
          .map((mark) => {
            const { x, y } = planPoint(mark.local, reach);
            return <circle key={mark.kind} className="site-plan-chosen" cx={x} cy={y} r={7} />;
          })}
      </svg>
      <span className="site-plan-north" aria-hidden>
        {t('place.north')}
      </span>
      <span className="site-plan-bar" aria-hidden style={{ width: `${part * 100}%` }}>
        {metres < 1000 ? t('place.metres', { n: metres }) : t('place.kilometres', { n: metres / 1000 })}
      </span>
    </div>
  );
}

interface MarkProps {
  readonly mark: PlanMark & { readonly local: { readonly eastM: number; readonly northM: number } };
  readonly reach: number;
  readonly length: number;
}

function Mark({ mark: { kind, local, errorM, view }, reach, length }: MarkProps) {
  const { x, y, isBeyond } = planPoint(local, reach);
  if (isBeyond) {
    const turn = (Math.atan2(y, x) * 180) / Math.PI;
    return (
      <path
        className={`site-plan-beyond site-plan-${kind}`}
        d="M-5 -4L4 0L-5 4Z"
        transform={`translate(${x} ${y}) rotate(${turn})`}
      />
    );
  }
  return (
    <g className={`site-plan-${kind}`}>
      <circle className="site-plan-error" cx={x} cy={y} r={(errorM / reach) * HALF} />
      {view ? <path className="site-plan-view" d={viewPath(local, view, length, reach)} /> : null}
      {kind === 'photo' ? (
        <circle className="site-plan-dot" cx={x} cy={y} r={2.6} />
      ) : (
        <path className="site-plan-dot" d={`M${x} ${y - 4}l4 4l-4 4l-4 -4Z`} />
      )}
    </g>
  );
}

/** A sector; only its axis where nobody knows how wide the picture is. */
function viewPath(
  from: MarkProps['mark']['local'],
  { degrees, opening }: NonNullable<PlanMark['view']>,
  length: number,
  reach: number,
): string {
  const at = ({ eastM, northM }: typeof from) => `${(eastM / reach) * HALF} ${(-northM / reach) * HALF}`;
  if (opening === null) return `M${at(from)}L${at(ahead(from, degrees, length))}`;
  const { left, right } = viewCone(from, degrees, opening, length);
  const radius = (length / reach) * HALF;
  return `M${at(from)}L${at(left)}A${radius} ${radius} 0 0 1 ${at(right)}Z`;
}
