import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { MemberFacts } from '#domain/contract/shapes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useHouse } from '../../shell/use-house.ts';

export interface PutMember {
  readonly mark: string;
  readonly body: Omit<MemberFacts, 'mark'>;
}

/** Enters or changes a member; also how a retired one comes back. */
export function usePutMember(onDone: () => void) {
  const { id: house } = useHouse();
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ mark, body }: PutMember) => call('putMember', { params: { house, mark }, body }),
    onSuccess: async () => {
      onDone();
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
}
