import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { differences, type Difference } from './preview-words.ts';

export function ChangedMember({ change }: { change: SchedulePreviewView['changed'][number] }) {
  const { t } = useWords();
  const fieldName = ({ field }: Difference) =>
    typeof field === 'string' ? t(`schedule.field.${field}`) : field.own;
  const value = (text: string) => (text === '' ? t('schedule.outcome.emptyValue') : text);
  return (
    <>
      <strong>{change.after.mark}</strong> {change.returns ? <em>{t('schedule.outcome.returns')}</em> : null}
      <ul className="plain-list soft">
        {differences(change.before, change.after).map((difference) => (
          <li key={fieldName(difference)}>
            {t('schedule.outcome.change', {
              field: fieldName(difference),
              before: value(difference.before),
              after: value(difference.after),
            })}
          </li>
        ))}
      </ul>
    </>
  );
}
