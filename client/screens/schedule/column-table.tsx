import { SCHEDULE_FIELD_NAMES } from './schedule-fields.ts';
import type { ScheduleField, SchedulePreviewView } from '#domain/contract/schedule-views';
import { formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';
import { Table } from '../../parts/table.tsx';
import { mapColumn, type ImportChoices } from './chosen-table.ts';
import { firstValues, hasMarkColumn } from './preview-words.ts';

export interface ColumnTableProps {
  preview: SchedulePreviewView;
  mapping: ImportChoices['mapping'];
  onMap: (mapping: ImportChoices['mapping']) => void;
}

export function ColumnTable({ preview, mapping, onMap }: ColumnTableProps) {
  const { t, lang } = useWords();
  const meanings: { value: ScheduleField | ''; label: string }[] = [
    { value: '', label: t('schedule.columns.kept') },
    ...SCHEDULE_FIELD_NAMES.map((value) => ({ value, label: t(`schedule.field.${value}`) })),
  ];
  const headings = (['header', 'meaning', 'sample'] as const).map((key) => t(`schedule.columns.${key}`));
  return (
    <section className="section">
      <h2>{t('schedule.columns.title')}</h2>
      <p className="lead">{t('schedule.columns.lead')}</p>
      {hasMarkColumn(preview) ? null : <Notice tone="problem">{t('schedule.columns.noMark')}</Notice>}
      <Table label={t('schedule.columns.list')} hideLabel headings={headings} onPhone="blocks">
        {preview.columns.map(({ index, header, field }) => {
          const name =
            header.trim() || t('schedule.columns.unnamed', { number: formatNumber(index + 1, lang) });
          return (
            <tr key={index}>
              <th scope="row">{name}</th>
              <td className="column-meaning">
                <Select
                  label={t('schedule.columns.meaningOf', { header: name })}
                  hideLabel
                  value={field ?? ''}
                  choices={meanings}
                  onChange={(chosen) => onMap(mapColumn(preview.columns, mapping, index, chosen))}
                />
              </td>
              <td className="column-sample">
                {firstValues(preview, index).map((value, i) => (
                  <span key={i}>{value}</span>
                ))}
              </td>
            </tr>
          );
        })}
      </Table>
    </section>
  );
}
