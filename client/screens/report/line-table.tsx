import type { ClosingReportView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Table } from '../../parts/table.tsx';
import { LineRow } from './line-row.tsx';

export interface LineTableProps {
  label: string;
  lines: ClosingReportView['days'][number]['coverings'][number]['lines'];
}

/** Hidden members with what is on record about each; on paper with a box to tick by hand. */
export function LineTable({ label, lines }: LineTableProps) {
  const { t } = useWords();
  const headings = [
    <span key="tick" className="report-tick-head">
      {t('report.columns.tick')}
    </span>,
    t('report.columns.mark'),
    t('report.columns.place'),
    t('report.columns.least'),
    t('report.columns.state'),
  ];
  return (
    <div className="report-lines">
      <Table label={label} hideLabel headings={headings}>
        {lines.map((line) => (
          <LineRow key={line.mark} line={line} />
        ))}
      </Table>
    </div>
  );
}
