import { useState } from 'react';
import type { ScheduleImportView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { AgreeToImport } from './agree-to-import.tsx';
import { BadRows } from './bad-rows.tsx';
import { FIRST_CHOICES, type ChosenTable, type ImportChoices } from './chosen-table.ts';
import { ColumnTable } from './column-table.tsx';
import { DoubtfulHeights } from './doubtful-heights.tsx';
import { ImportOutcome } from './import-outcome.tsx';
import { MissingMembers } from './missing-members.tsx';
import { hasMarkColumn } from './preview-words.ts';
import { OutOfFrame } from './out-of-frame.tsx';
import { usePreview } from './use-preview.ts';

export interface ImportPreviewProps {
  table: ChosenTable;
  onDone: (outcome: ScheduleImportView) => void;
}

export function ImportPreview({ table, onDone }: ImportPreviewProps) {
  const { t } = useWords();
  const [choices, setChoices] = useState<ImportChoices>(FIRST_CHOICES);
  const query = usePreview(table, choices);
  const change = (part: Partial<ImportChoices>) => setChoices({ ...choices, ...part });
  return (
    <QueryState query={query}>
      {(preview) => (
        <>
          <p role="status">
            {query.isFetching
              ? t('schedule.reading')
              : t('schedule.found', {
                  file: table.fileName,
                  count: preview.rows,
                  encoding: preview.encoding.toUpperCase(),
                })}
          </p>
          <ColumnTable preview={preview} mapping={choices.mapping} onMap={(mapping) => change({ mapping })} />
          {preview.problems.length > 0 ? (
            <BadRows
              problems={preview.problems}
              areSkipped={choices.badRows === 'skip'}
              onSkip={(skip) => change({ badRows: skip ? 'skip' : 'refuse' })}
            />
          ) : null}
          <OutOfFrame preview={preview} />
          <DoubtfulHeights members={preview.doubtfulHeights} />
          {preview.rows > 0 && hasMarkColumn(preview) ? (
            <MissingMembers
              retired={preview.retired}
              value={choices.missing}
              onChange={(missing) => change({ missing })}
            />
          ) : null}
          <ImportOutcome preview={preview} />
          <AgreeToImport
            table={table}
            choices={choices}
            preview={preview}
            isSettled={!query.isFetching}
            onDone={onDone}
          />
        </>
      )}
    </QueryState>
  );
}
