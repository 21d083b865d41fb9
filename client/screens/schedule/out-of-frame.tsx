import { Link } from 'react-router';
import type { SchedulePreviewView, ScheduleField } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { Table } from '../../parts/table.tsx';
import { useHouse } from '../../shell/use-house.ts';

const SHOWN = 200;

/** Members whose place in the frame cannot be: they are imported all the same. */
export function OutOfFrame({
  preview: { outOfFrame, lacksGrid },
}: {
  preview: Pick<SchedulePreviewView, 'outOfFrame' | 'lacksGrid'>;
}) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (lacksGrid)
    return (
      <p>
        {t('schedule.place.lacksGrid')} <Link to={`/houses/${house}/grid`}>{t('schedule.place.toGrid')}</Link>
      </p>
    );
  if (outOfFrame.length === 0) return null;
  const title = t('schedule.place.title', { count: outOfFrame.length });
  return (
    <section className="section">
      <h2>{title}</h2>
      <p className="soft">{t('schedule.place.lead')}</p>
      <Table
        label={title}
        hideLabel
        headings={[t('schedule.problems.line'), t('schedule.field.mark'), t('schedule.problems.reason')]}
      >
        {outOfFrame.slice(0, SHOWN).map(({ line, mark, reason, field, value }) => (
          <tr key={mark}>
            <td>{line}</td>
            <td>{mark}</td>
            <td>
              {t(`schedule.why.${reason}`)}{' '}
              {value === ''
                ? null
                : t('schedule.place.said', { field: t(`schedule.field.${field as ScheduleField}`), value })}
            </td>
          </tr>
        ))}
      </Table>
      {outOfFrame.length > SHOWN ? (
        <p>{t('schedule.outcome.andMore', { count: outOfFrame.length - SHOWN })}</p>
      ) : null}
    </section>
  );
}
