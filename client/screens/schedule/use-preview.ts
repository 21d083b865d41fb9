import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { call } from '../../api/call.ts';
import { useHouse } from '../../shell/use-house.ts';
import { importQuery, type ChosenTable, type ImportChoices } from './chosen-table.ts';

/**
 * What importing would do under these choices. Its key hangs below the house: whatever is said of the
 * house meanwhile makes the preview anew.
 */
export function usePreview(table: ChosenTable, choices: ImportChoices) {
  const { id: house } = useHouse();
  return useQuery({
    queryKey: ['house', house, 'schedule-preview', table.key, choices],
    queryFn: async ({ signal }) => {
      const answer = await call('importSchedule', {
        params: { house },
        query: importQuery(table, choices, { preview: '1' }),
        raw: { body: table.bytes, contentType: table.contentType },
        signal,
      });
      return answer as SchedulePreviewView;
    },
    placeholderData: keepPreviousData,
    gcTime: 0,
  });
}
