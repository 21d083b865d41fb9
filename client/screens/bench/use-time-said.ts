import { useMutation, useQueryClient } from '@tanstack/react-query';
import { keys } from '../../api/keys.ts';

/** A word about times changes photos, days, histories and the report: all of the house is asked for anew. */
export function useTimeSaid<Input>(
  house: string,
  say: (input: Input) => Promise<unknown>,
  onDone: () => void,
) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: say,
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
      onDone();
    },
  });
}
