import { useId, type ReactNode } from 'react';
import { STAGES } from '#domain/frame/stage';
import { useWords } from '../../i18n/use-words.ts';
import { InkPatterns } from './ink-patterns.tsx';

const STATES = ['held', 'not-yet', 'gap', 'lost', 'waived'] as const;
/** Others are a part of the bar. */
const SAMPLES: Readonly<Record<string, string>> = {
  held: 'M8 12H32',
  lost: 'M8 6H32V18H8ZM8 6L32 18M8 18L32 6',
};
const ZONES = ['open', 'closed'] as const;
const HATCHED: readonly string[] = ['cut', 'raised', 'pegged', 'lath-on'];
const BAR = 'M2 6H38V18H2Z';

/** What outline, hatching, lines and vermilion say; stages in the order of work. */
export function FrameLegend() {
  const { t } = useWords();
  const id = useId();
  const fillOf = (ink: string) => (HATCHED.includes(ink) ? { fill: `url(#${id}-${ink})` } : {});
  return (
    <section aria-label={t('frame.legend.title')}>
      <svg className="out-of-sight" aria-hidden="true">
        <InkPatterns id={id} unit={1} />
      </svg>
      <ul className="plain-list frame-legend">
        {['none' as const, ...STAGES].map((stage) => (
          <li key={stage}>
            <Sample>
              <path className={`frame-ink frame-ink-${stage}`} {...fillOf(stage)} d={BAR} />
            </Sample>
            {stage === 'none' ? t('frame.legend.none') : t(`common.stage.${stage}`)}
          </li>
        ))}
        {STATES.map((state) => (
          <li key={state}>
            <Sample>
              <path className="frame-ink frame-ink-none" d={BAR} />
              <path className={`frame-ink frame-ink-${state}`} d={SAMPLES[state] ?? 'M8 6H32V18H8Z'} />
            </Sample>
            {t(`frame.legend.${state}`)}
          </li>
        ))}
        <li>
          <Sample>
            <path className="frame-ink frame-ink-none" d={BAR} />
            <path className="frame-ink frame-sheeted" d="M3 16L9 8L15 16L21 8L27 16L33 8L37 14" />
          </Sample>
          {t('protection.frame.legend')}
        </li>
        {ZONES.map((zone) => (
          <li key={zone}>
            <Sample>
              <path
                className={`frame-ink frame-zone frame-zone-${zone}`}
                {...(zone === 'closed' ? { fill: `url(#${id}-plaster)` } : {})}
                d="M2 3H38V21H2Z"
              />
            </Sample>
            {t(`frame.legend.${zone}`)}
          </li>
        ))}
      </ul>
      <p className="soft">{t('common.peggedMeans')}</p>
    </section>
  );
}

function Sample({ children }: { children: ReactNode }) {
  return (
    <svg className="frame-sample" viewBox="0 0 40 24" aria-hidden="true">
      {children}
    </svg>
  );
}
