import { Link } from 'react-router';
import type { ClosingReportView } from '#domain/contract/views';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { nextClosings, type NextClosing } from './next-closings.ts';

export function NextClosings({ report }: { report: ClosingReportView }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const open = nextClosings(report);
  if (open.length === 0) {
    const plan = <LinkButton to={`/houses/${house}/coverings/new`}>{t('days.plan')}</LinkButton>;
    // What is planned or has closed is in the report, even where it hides nothing.
    const title = report.days.length === 0 ? t('days.nextNone') : t('days.nextAllClosed');
    return <EmptyState title={title} action={plan} />;
  }
  return (
    <>
      <ul className="closings plain-list">
        {open.map((covering) => (
          <li key={covering.id}>
            <Link to={`/houses/${house}/coverings/${covering.id}`}>{covering.name}</Link>
            <DaysLeft covering={covering} />
            <GapsLeft covering={covering} />
          </li>
        ))}
      </ul>
      <p>
        <Link to={`/houses/${house}/report`}>{t('days.wholeReport')}</Link>
      </p>
    </>
  );
}

function DaysLeft({ covering: { plannedDay, daysLeft } }: { covering: NextClosing }) {
  const { t, lang } = useWords();
  if (plannedDay === null || daysLeft === null) return <span className="soft">{t('days.noDay')}</span>;
  const left =
    daysLeft === 0
      ? t('days.left.today')
      : daysLeft < 0
        ? t('days.left.late', { count: -daysLeft })
        : t('days.left.ahead', { count: daysLeft });
  return (
    <span>
      {formatDay(plannedDay, lang)} <strong className={daysLeft < 0 ? 'act-text' : undefined}>{left}</strong>
    </span>
  );
}

function GapsLeft({ covering: { counts } }: { covering: NextClosing }) {
  const { t } = useWords();
  const hidden = t('common.count.members', { count: counts.hidden });
  if (counts.hidden === 0) return <span className="soft">{t('days.hidesNothing')}</span>;
  if (counts.gaps === 0) return <span>{t('days.complete', { count: counts.hidden })}</span>;
  return <span className="act-text">{t('days.gapsLeft', { count: counts.gaps, hidden })}</span>;
}
