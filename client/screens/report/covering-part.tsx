import { Link } from 'react-router';
import type { ClosingReportView } from '#domain/contract/views';
import { formatInstant, formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { DaysLeft } from '../coverings/days-left.tsx';
import { LineTable } from './line-table.tsx';

type Covering = ClosingReportView['days'][number]['coverings'][number];

/** One covering in the report: what it is, how it stands, and its members. */
export function CoveringPart({ covering }: { covering: Covering }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { id, name, kind, closedAt, daysLeft, lines } = covering;
  return (
    <section className="report-covering">
      <h3>
        <Link to={`/houses/${house}/coverings/${id}`}>{name}</Link>{' '}
        <span className="soft">{t(`common.coveringKind.${kind}`)}</span>
      </h3>
      <p className="row report-facts">
        {closedAt === null ? (
          <DaysLeft days={daysLeft} />
        ) : (
          <span>{t('coverings.closedOn', { when: formatInstant(closedAt, zone, lang) })}</span>
        )}
        <Counts covering={covering} />
      </p>
      {lines.length === 0 ? (
        <p className="soft">{t('coverings.one.hidesNothing')}</p>
      ) : (
        <LineTable label={t('report.table', { name })} lines={lines} />
      )}
    </section>
  );
}

function Counts({ covering: { counts } }: { covering: Covering }) {
  const { t, lang } = useWords();
  const { hidden, onRecord, gaps, lost, retired } = counts;
  return (
    <>
      <span>
        {t('report.counted', { onRecord: formatNumber(onRecord, lang), hidden: formatNumber(hidden, lang) })}
      </span>
      {gaps > 0 ? <span className="act-text">{t('report.count.gaps', { count: gaps })}</span> : null}
      {lost > 0 ? <span className="act-text">{t('report.count.lost', { count: lost })}</span> : null}
      {retired > 0 ? <span className="soft">{t('report.count.retired', { count: retired })}</span> : null}
    </>
  );
}
