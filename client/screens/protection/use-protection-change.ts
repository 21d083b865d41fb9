import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ProtectionView } from '#domain/contract/protection';
import { keys } from '../../api/keys.ts';

/** A statement about protection; what the house shows is asked for anew once it is accepted. */
export function useProtectionChange<Input>(
  house: string,
  say: (input: Input) => Promise<ProtectionView>,
  onDone: () => void,
) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: say,
    onSuccess: async () => {
      await Promise.all([
        client.invalidateQueries({ queryKey: keys.protections(house) }),
        client.invalidateQueries({ queryKey: keys.report(house) }),
      ]);
      onDone();
    },
  });
}
