import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Table } from '../../parts/table.tsx';

/** More than these help nobody; the file is wrong as a whole then. */
const DRAWN = 200;

export interface BadRowsProps {
  problems: SchedulePreviewView['problems'];
  areSkipped: boolean;
  onSkip: (skip: boolean) => void;
}

export function BadRows({ problems, areSkipped, onSkip }: BadRowsProps) {
  const { t } = useWords();
  const headings = (['line', 'column', 'value', 'reason'] as const).map((key) =>
    t(`schedule.problems.${key}`),
  );
  const title = t('schedule.problems.title', { count: problems.length });
  return (
    <section className="section">
      <h2 className="act-text">{title}</h2>
      <Table label={title} hideLabel headings={headings}>
        {problems.slice(0, DRAWN).map((problem, i) => (
          <tr key={i}>
            <td>{problem.line}</td>
            <td>{problem.column}</td>
            <td className="bad-value">{problem.value}</td>
            <td>{t(`schedule.reason.${problem.reason}`, { line: problem.firstLine ?? '' })}</td>
          </tr>
        ))}
      </Table>
      {problems.length > DRAWN ? (
        <p>{t('schedule.outcome.andMore', { count: problems.length - DRAWN })}</p>
      ) : null}
      <Checkbox isSelected={areSkipped} onChange={onSkip}>
        {t('schedule.problems.skip')}
      </Checkbox>
      <p className="soft">{t('schedule.problems.skipHint')}</p>
    </section>
  );
}
