import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { CoveringView } from '#domain/contract/views';
import { keys } from '../../api/keys.ts';

/** A statement about a covering; what the house shows is asked for anew once it is accepted. */
export function useCoveringChange<Input>(
  house: string,
  say: (input: Input) => Promise<CoveringView>,
  onDone: (covering: CoveringView) => void,
) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: say,
    onSuccess: async (covering) => {
      await Promise.all([
        client.invalidateQueries({ queryKey: keys.coverings(house) }),
        client.invalidateQueries({ queryKey: keys.report(house) }),
      ]);
      onDone(covering);
    },
  });
}
