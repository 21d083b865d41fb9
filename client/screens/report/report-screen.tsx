import { Link, useSearchParams } from 'react-router';
import type { ClosingReportView } from '#domain/contract/report-views';
import { addressOf } from '../../api/address.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { PageMargins } from './page-margins.tsx';
import { ReportDays } from './report-days.tsx';
import { onlyMissing } from './only-missing.ts';
import { useReport } from './use-report.ts';
import './report.css';

/** What must still be photographed before it disappears, by closing day; also on paper, for the site. */
export function ReportScreen() {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const query = useReport(house);
  return (
    <Page
      title={t('report.title')}
      lead={t('report.lead')}
      actions={
        <>
          <Button look="act" onPress={() => window.print()}>
            {t('report.print')}
          </Button>
          <LinkButton to={`/houses/${house}/shots`}>{t('common.toShots')}</LinkButton>
          <a
            className="button button-plain"
            href={addressOf('closingReport', { house }, { format: 'csv', lang })}
            download
          >
            {t('report.csv')}
          </a>
        </>
      }
    >
      <QueryState query={query}>{(report) => <Report report={report} />}</QueryState>
    </Page>
  );
}

function Report({ report }: { report: ClosingReportView }) {
  const { t, lang } = useWords();
  const { id: house, name, zone } = useHouse();
  const [search, setSearch] = useSearchParams();
  const mayPlan = useMay('record');
  const isNarrow = search.get('only') === 'missing';
  if (report.days.length === 0) {
    return (
      <EmptyState
        title={t('report.none')}
        action={
          mayPlan ? (
            <LinkButton look="act" to={`/houses/${house}/coverings/new`}>
              {t('report.plan')}
            </LinkButton>
          ) : null
        }
      >
        {mayPlan ? t('report.noneText') : null}
      </EmptyState>
    );
  }
  const when = formatInstant(report.asOf, zone, lang);
  const { counts } = report;
  const days = isNarrow ? onlyMissing(report.days) : report.days;
  return (
    <div className="stack report">
      <PageMargins left={name} right={t('report.asOf', { when })} />
      <p className="report-paper-head">{t('report.printedFor', { house: name, when })}</p>
      <p className="report-whole">
        {t(counts.waived > 0 ? 'report.wholeWaived' : 'report.whole', { ...counts })}
      </p>
      {counts.onRecord > counts.firm ? (
        <p>
          {t('report.weigh', { count: counts.onRecord - counts.firm })}{' '}
          <Link className="line-link no-print" to={`/houses/${house}/findings`}>
            {t('findings.toAll')}
          </Link>
        </p>
      ) : null}
      {report.unhidden > 0 ? (
        <p className="soft">{t('report.unhidden', { count: report.unhidden })}</p>
      ) : null}
      <div className="row no-print">
        <Checkbox
          isSelected={isNarrow}
          onChange={(isOn) => setSearch(isOn ? { only: 'missing' } : {}, { replace: true })}
        >
          {t('report.onlyGaps')}
        </Checkbox>
        <span className="soft">{t('report.asOf', { when })}</span>
      </div>
      <p className="report-paper">{t('report.tickHint')}</p>
      {days.length === 0 ? (
        <Notice tone="done">
          {t('report.nothingMissing')} {t('report.nothingMissingText')}
        </Notice>
      ) : null}
      <ReportDays days={days} />
      <p className="report-caution">{t('common.caution')}</p>
      <p className="report-paper report-signature">{t('report.signature')}</p>
    </div>
  );
}
