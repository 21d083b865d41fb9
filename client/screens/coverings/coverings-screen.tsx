import { Link } from 'react-router';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import { compareMarks } from '#domain/frame/mark-order';
import { daysBetween } from '#domain/record/days-between';
import { dayIn, formatDay, formatInstant, formatNumber } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Table } from '../../parts/table.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { ProtectionSection } from '../protection/protection-section.tsx';
import { useReport } from '../report/use-report.ts';
import { CalendarSection } from './calendar-section.tsx';
import { findCovering } from './closing-preview.ts';
import { DaysLeft } from './days-left.tsx';
import { HoldReason } from './hold-reason.tsx';
import { HoldWord } from './hold-word.tsx';
import { LAYER_WORDS } from './layer-words.ts';
import { MissingList } from './missing-list.tsx';
import { standingOf } from './standing-of.ts';
import { useCoverings } from './use-coverings.ts';
import './coverings.css';

/** All coverings of the house: when each closes, how much it hides, what is missing. */
export function CoveringsScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useCoverings(house);
  const report = useReport(house).data;
  const mayPlan = useMay('record');
  const add = mayPlan ? (
    <LinkButton look="act" to={`/houses/${house}/coverings/new`}>
      {t('coverings.add')}
    </LinkButton>
  ) : null;
  return (
    <Page title={t('coverings.title')} lead={t('coverings.lead')} actions={add}>
      <QueryState query={query}>
        {({ coverings }) =>
          coverings.length === 0 ? (
            <EmptyState title={t('coverings.none')}>{mayPlan ? t('coverings.noneText') : null}</EmptyState>
          ) : (
            <CoveringTable coverings={coverings} report={report} />
          )
        }
      </QueryState>
      <Link className="alone" to={`/houses/${house}/needs`}>
        {t('needs.link')}
      </Link>
      <ProtectionSection />
      <CalendarSection />
    </Page>
  );
}

interface CoveringTableProps {
  coverings: readonly CoveringView[];
  report: ClosingReportView | undefined;
}

function CoveringTable({ coverings, report }: CoveringTableProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { name, kind, day, hides, record } = t('coverings.columns', { returnObjects: true });
  return (
    <Table label={t('coverings.list')} hideLabel headings={[name, kind, day, hides, record]} onPhone="blocks">
      {[...coverings].sort(byDay).map((covering) => (
        <tr key={covering.id}>
          <th scope="row">
            <Link to={`/houses/${house}/coverings/${covering.id}`}>{covering.name}</Link>
          </th>
          <td>{t(`common.coveringKind.${covering.kind}`)}</td>
          <td>
            <Closing covering={covering} />
            <StandingWords standing={standingOf(covering, report)} />
          </td>
          <td data-label={hides}>{t('common.count.members', { count: covering.hides.length })}</td>
          <td data-label={record}>
            <RecordState report={report} covering={covering} />
          </td>
        </tr>
      ))}
    </Table>
  );
}

function StandingWords({ standing }: { standing: Standing }) {
  return (
    <>
      <div>
        <HoldWord phase={standing.phase} />
      </div>
      <div>
        <HoldReason standing={standing} />
      </div>
    </>
  );
}

/** What is still open first, by its day; then what has closed, the latest first. */
function byDay(a: CoveringView, b: CoveringView): number {
  if (a.closed && b.closed) return a.closed.at < b.closed.at ? 1 : -1;
  if (a.closed || b.closed) return a.closed ? 1 : -1;
  const [dayA, dayB] = [a.plannedDay ?? '9999', b.plannedDay ?? '9999'];
  if (dayA !== dayB) return dayA < dayB ? -1 : 1;
  return compareMarks(a.name, b.name);
}

function Closing({ covering: { closed, plannedDay } }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (closed) return <span>{t('coverings.closedOn', { when: formatInstant(closed.at, zone, lang) })}</span>;
  if (plannedDay === null) return <DaysLeft days={null} />;
  return (
    <>
      <div>{formatDay(plannedDay, lang)}</div>
      <DaysLeft days={daysBetween(dayIn(zone, new Date()), plannedDay)} />
    </>
  );
}

function RecordState({
  report,
  covering,
}: {
  report: ClosingReportView | undefined;
  covering: CoveringView;
}) {
  const { t, lang } = useWords();
  const found = findCovering(report, covering.id);
  if (!found) return null;
  const { counts, lines } = found;
  if (covering.hides.length === 0) return <span className="soft">{t('coverings.recordState.empty')}</span>;
  const { gaps, lost, waived, before, onRecord, firm, hidden } = counts;
  const earlier = before > 0 ? LAYER_WORDS[lang].hiddenBeforeCount(formatNumber(before, lang)) : null;
  const weigh = onRecord > firm ? t('report.count.weigh', { count: onRecord - firm }) : null;
  const accepted = waived > 0 ? t('report.count.waived', { count: waived }) : null;
  const complete = hidden > 0 || earlier === null ? t('coverings.recordState.complete') : null;
  if (gaps + lost + waived === 0) return <span>{joinWords([complete, weigh, earlier], lang)}</span>;
  const ratio = `${formatNumber(onRecord, lang)} / ${formatNumber(hidden, lang)}`;
  return (
    <>
      <span>{joinWords([ratio, weigh, accepted, earlier], lang)}</span>{' '}
      <span className="act-text">
        {gaps > 0 ? t('coverings.recordState.gaps', { count: gaps }) : ''}
        {lost > 0 ? t('coverings.recordState.lost', { count: lost }) : ''}
      </span>
      <MissingList lines={lines} />
    </>
  );
}
