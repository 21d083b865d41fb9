import { useMemo } from 'react';
import { useQuery } from '@tanstack/react-query';
import { axisOf } from '#domain/frame/axis-of';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import type { Axis } from '#domain/frame/set-out';
import { usualLie } from '#domain/lexicon/usual-lie';
import { call } from '../api/call.ts';
import { keys } from '../api/keys.ts';
import { useLexicon } from '../shell/use-lexicon.ts';
import type { MemberIndex } from './member-index.ts';

/** Where members lie, worked out as on the server. */
export interface Space {
  readonly reader: GridReader;
  readonly axis: (mark: string) => Axis | null;
}

/** null while the house has no grid, or nobody knows yet whether it has. */
export function useSpace(house: string, index: MemberIndex): Space | null {
  const lexicon = useLexicon();
  const { data } = useQuery({
    queryKey: keys.grid(house),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('readGrid', { params: { house }, signal }),
  });
  const grid = data?.grid ?? null;
  return useMemo(() => {
    if (grid === null) return null;
    const reader = gridReader(grid);
    const axis = (mark: string) => {
      const member = index.byMark.get(mark);
      if (!member?.setOut) return null;
      const read = axisOf(member.setOut, usualLie(member.kind, lexicon), reader);
      return read.ok ? read.axis : null;
    };
    return { reader, axis };
  }, [grid, index, lexicon]);
}
