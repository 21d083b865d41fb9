import type { ReactNode } from 'react';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Table } from '../../parts/table.tsx';
import { LineRow, type Line } from './line-row.tsx';

export interface LineTableProps {
  label: string;
  lines: readonly Line[];
  /** Whether their covering has closed: a gap is then to be photographed from the other face. */
  isClosed: boolean;
  /** Lines whose kind is shown on the screen for the first time; without it, those of this table. */
  withReading?: ReadonlySet<Line>;
  /** Said on paper over the headings of each page. */
  paperHead?: ReactNode;
}

const COLUMNS = ['tick', 'mark', 'place', 'least', 'state', 'remark'] as const;
const ON_PAPER: readonly string[] = ['tick', 'remark'];

/** Hidden members with what is on record about each; on paper with a box to tick and room for a word by hand. */
export function LineTable({ label, lines, isClosed, withReading: given, paperHead }: LineTableProps) {
  const { t } = useWords();
  const lexicon = useLexicon();
  const withReading = given ?? firstOfKind(lines, lexicon);
  const headings = COLUMNS.map((column) => (
    <span key={column} className={ON_PAPER.includes(column) ? 'report-by-hand' : undefined}>
      {t(`report.columns.${column}`)}
    </span>
  ));
  const above = paperHead ? (
    <tr className="report-head-row">
      <td colSpan={COLUMNS.length}>{paperHead}</td>
    </tr>
  ) : null;
  return (
    <div className="report-lines">
      <Table
        label={label}
        hideLabel
        headings={headings}
        above={above}
        columns={COLUMNS.map((column) => `report-col-${column}`)}
      >
        {lines.map((line) => (
          <LineRow key={line.mark} line={line} hasReading={withReading.has(line)} isClosed={isClosed} />
        ))}
      </Table>
    </div>
  );
}
