import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { gridLosses, isLoss, type GridLosses } from './grid-losses.ts';

const NOTHING: GridLosses = { coverings: [], members: 0 };

/** Works out what a grid takes away from what lies by the one before; what takes nothing is saved at once. */
export function useWeighGrid(house: string, before: StatedGrid | null, save: (grid: StatedGrid) => void) {
  const client = useQueryClient();
  const lexicon = useLexicon();
  return useMutation({
    mutationFn: async (after: StatedGrid) => {
      if (!before) return NOTHING;
      const [{ members }, { coverings }] = await Promise.all([
        client.fetchQuery({
          queryKey: keys.members(house),
          meta: { isAside: true },
          queryFn: ({ signal }) => call('listMembers', { params: { house }, signal }),
        }),
        client.fetchQuery({
          queryKey: keys.coverings(house),
          meta: { isAside: true },
          queryFn: ({ signal }) => call('listCoverings', { params: { house }, signal }),
        }),
      ]);
      return gridLosses(before, after, { members, coverings, lexicon });
    },
    onSuccess: (losses, after) => {
      if (!isLoss(losses)) save(after);
    },
  });
}
