import type { ClosingReportView } from '#domain/contract/report-views';
import { formatDay } from '../../i18n/format.ts';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { closedLast } from './closed-last.ts';
import { CoveringPart, type CoveringPartProps } from './covering-part.tsx';

/** Covering by covering: by closing day what is open, then what has closed. */
export function ReportDays({ days }: { days: ClosingReportView['days'] }) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { open, closed } = closedLast(days);
  const inOrder = [...open.flatMap(({ coverings }) => coverings), ...closed];
  const withReading = firstOfKind(
    inOrder.flatMap(({ lines }) => lines),
    lexicon,
  );
  return (
    <>
      {open.map(({ day, coverings }) => (
        <ReportPart
          key={day ?? ''}
          title={day === null ? t('report.noDay') : t('report.day', { day: formatDay(day, lang) })}
          coverings={coverings}
          withReading={withReading}
        />
      ))}
      {closed.length > 0 ? (
        <ReportPart title={t('report.closed')} coverings={closed} withReading={withReading} />
      ) : null}
    </>
  );
}

interface ReportPartProps extends Pick<CoveringPartProps, 'withReading'> {
  title: string;
  coverings: ClosingReportView['days'][number]['coverings'];
}

function ReportPart({ title, coverings, withReading }: ReportPartProps) {
  return (
    <section className="section report-day">
      <h2>{title}</h2>
      {coverings.map((covering) => (
        <CoveringPart key={covering.id} covering={covering} withReading={withReading} />
      ))}
    </section>
  );
}
