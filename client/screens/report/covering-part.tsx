import { memo, useLayoutEffect, useRef } from 'react';
import { Link, useLocation } from 'react-router';
import type { ClosingReportView } from '#domain/contract/report-views';
import { formatInstant, formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { LAYER_WORDS } from '../coverings/layer-words.ts';
import { DaysLeft } from '../coverings/days-left.tsx';
import { HoldStanding } from '../coverings/hold-standing.tsx';
import type { Line } from './line-row.tsx';
import { LineTable } from './line-table.tsx';

type Covering = ClosingReportView['days'][number]['coverings'][number];

/** On paper a covering of so few lines stays on one page: at most half a page is left empty for it. */
const KEPT_WHOLE = 8;

export interface CoveringPartProps {
  covering: Covering;
  withReading: ReadonlySet<Line>;
}

/** One covering in the report: what it is, how it stands, and its members. Drawn again only where it is another. */
export const CoveringPart = memo(function CoveringPart({ covering, withReading }: CoveringPartProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { id, name, kind, lines } = covering;
  const section = useRef<HTMLElement>(null);
  const isWanted = useLocation().hash === `#${id}`;
  // The report comes after the page, when the browser has looked for the place already.
  useLayoutEffect(() => {
    if (isWanted) section.current?.scrollIntoView();
  }, [isWanted]);
  const head = (
    <>
      <strong>{name}</strong> <span>{t(`common.coveringKind.${kind}`)}</span> <Facts covering={covering} />
    </>
  );
  return (
    <section
      id={id}
      ref={section}
      className={lines.length <= KEPT_WHOLE ? 'report-covering keep-together' : 'report-covering'}
    >
      <h3 className={lines.length === 0 ? undefined : 'report-on-screen'}>
        <Link to={`/houses/${house}/coverings/${id}`}>{name}</Link>{' '}
        <span className="soft">{t(`common.coveringKind.${kind}`)}</span>
      </h3>
      <p className={lines.length === 0 ? 'row report-facts' : 'row report-facts report-on-screen'}>
        <Facts covering={covering} />
      </p>
      {lines.length === 0 ? (
        <p className="soft">{t('coverings.one.hidesNothing')}</p>
      ) : (
        <LineTable
          label={t('report.table', { name })}
          lines={lines}
          isClosed={covering.closedAt !== null}
          withReading={withReading}
          paperHead={head}
        />
      )}
    </section>
  );
}, isDrawn);

function isDrawn(before: CoveringPartProps, now: CoveringPartProps): boolean {
  const { lines } = now.covering;
  return (
    before.covering === now.covering &&
    lines.every((line) => before.withReading.has(line) === now.withReading.has(line))
  );
}

function Facts({ covering }: { covering: Covering }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const { closedAt, daysLeft } = covering;
  return (
    <>
      {closedAt === null ? (
        <DaysLeft days={daysLeft} />
      ) : (
        <span>{t('coverings.closedOn', { when: formatInstant(closedAt, zone, lang) })}</span>
      )}{' '}
      <HoldStanding standing={covering.standing} /> <Counts covering={covering} />
    </>
  );
}

function Counts({ covering: { counts } }: { covering: Covering }) {
  const { t, lang } = useWords();
  const { hidden, onRecord, firm, gaps, lost, waived, before, retired } = counts;
  return (
    <>
      <span>
        {t('report.counted', { onRecord: formatNumber(onRecord, lang), hidden: formatNumber(hidden, lang) })}
      </span>{' '}
      {onRecord > firm ? <span>{t('report.count.weigh', { count: onRecord - firm })}</span> : null}{' '}
      {gaps > 0 ? <span className="act-text">{t('report.count.gaps', { count: gaps })}</span> : null}{' '}
      {lost > 0 ? <span className="act-text">{t('report.count.lost', { count: lost })}</span> : null}{' '}
      {waived > 0 ? <span>{t('report.count.waived', { count: waived })}</span> : null}{' '}
      {before > 0 ? (
        <span className="soft">{LAYER_WORDS[lang].hiddenBeforeCount(formatNumber(before, lang))}</span>
      ) : null}{' '}
      {retired > 0 ? <span className="soft">{t('report.count.retired', { count: retired })}</span> : null}
    </>
  );
}
