import { useState } from 'react';
import type { ScheduleImportView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { ChosenTable } from './chosen-table.ts';
import { ImportDone } from './import-done.tsx';
import { ImportPreview } from './import-preview.tsx';
import { TableChoice } from './table-choice.tsx';
import './schedule.css';

export function ScheduleScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [table, setTable] = useState<ChosenTable | null>(null);
  const [done, setDone] = useState<ScheduleImportView | null>(null);
  const again = () => {
    setTable(null);
    setDone(null);
  };
  return (
    <Page
      title={t('schedule.title')}
      lead={t('schedule.lead')}
      breadcrumb={[{ to: `/houses/${house}/members`, label: t('common.nav.members') }]}
    >
      {done ? (
        <ImportDone outcome={done} onAgain={again} />
      ) : (
        <>
          <TableChoice hasTable={table !== null} onChoose={setTable} />
          {table ? <ImportPreview key={table.key} table={table} onDone={setDone} /> : null}
        </>
      )}
    </Page>
  );
}
