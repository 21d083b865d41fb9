import type { Site } from '#domain/contract/shapes';
import { useWords } from '../../i18n/use-words.ts';
import { lengthWords } from './length-words.ts';

/** What the marks of the plan mean. */
export function PlanLegend({ site }: { site: Site | null }) {
  const { t, lang } = useWords();
  return (
    <ul className="plain-list plan-legend" aria-label={t('place.plan.legend')}>
      {site ? (
        <li>
          <svg viewBox="-10 -10 20 20" aria-hidden>
            <circle className="site-plan-site" r="8" />
          </svg>
          {t('place.plan.site', { radius: lengthWords(t, lang, site.radiusM) })}
        </li>
      ) : null}
      <li>
        <svg viewBox="-10 -10 20 20" aria-hidden className="site-plan-photo">
          <path className="site-plan-view" d="M0 4L-7 -8H7Z" />
          <circle className="site-plan-error" cy="4" r="5.5" />
          <circle className="site-plan-dot" cy="4" r="2.6" />
        </svg>
        {t('place.plan.photo')}
      </li>
      <li>
        <svg viewBox="-10 -10 20 20" aria-hidden className="site-plan-device">
          <path className="site-plan-dot" d="M0 -6L6 0L0 6L-6 0Z" />
        </svg>
        {t('place.plan.device')}
      </li>
      <li>
        <svg viewBox="-10 -10 20 20" aria-hidden>
          <path className="site-plan-beyond site-plan-photo" d="M-6 -6L7 0L-6 6Z" />
        </svg>
        {t('place.plan.beyond')}
      </li>
    </ul>
  );
}
