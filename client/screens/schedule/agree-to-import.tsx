import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ScheduleImportView, SchedulePreviewView } from '#domain/contract/schedule-views';
import { ProblemError, call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { importQuery, type ChosenTable, type ImportChoices } from './chosen-table.ts';
import { whyNothing } from './preview-words.ts';

export interface AgreeToImportProps {
  table: ChosenTable;
  choices: ImportChoices;
  preview: SchedulePreviewView;
  /** False while the preview on screen is not yet the one of the choices. */
  isSettled: boolean;
  onDone: (outcome: ScheduleImportView) => void;
}

export function AgreeToImport({ table, choices, preview, isSettled, onDone }: AgreeToImportProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const run = useMutation({
    mutationFn: async (agree: string) => {
      const query = importQuery(table, choices, { agree });
      const raw = { body: table.bytes, contentType: table.contentType };
      return (await call('importSchedule', { params: { house }, query, raw })) as ScheduleImportView;
    },
    onSuccess: onDone,
    // Whether it went through or the schedule had changed: everything shown of the house is stale now.
    onSettled: () => client.invalidateQueries({ queryKey: keys.allOf(house) }),
  });
  const isNothing = whyNothing(preview) !== null;
  const obstacle = obstacleOf(preview, choices);
  const hasChanged =
    run.error instanceof ProblemError && run.error.problem.code === 'schedule-changed-since-preview';
  return (
    <div className="stack">
      {hasChanged ? (
        <Notice tone="problem">{t('schedule.changedMeanwhile')}</Notice>
      ) : (
        <ProblemNotice error={run.error} />
      )}
      {obstacle ? <Notice>{t(`schedule.cannot.${obstacle}`)}</Notice> : null}
      {isNothing ? null : <p className="soft">{t('schedule.agreeHint')}</p>}
      <div className="row">
        <Button
          look="act"
          isPending={run.isPending}
          isDisabled={!isSettled || obstacle !== null || isNothing}
          onPress={() => run.mutate(preview.digest)}
        >
          {t('schedule.agree')}
        </Button>
      </div>
    </div>
  );
}

/** Where there is nothing to import, the outcome above says why. */
function obstacleOf(preview: SchedulePreviewView, { badRows }: ImportChoices): 'badRows' | null {
  if (whyNothing(preview) !== null) return null;
  return preview.problems.length > 0 && badRows === 'refuse' ? 'badRows' : null;
}
