import type { CoveringView, MemberView } from '#domain/contract/views';
import { axisOf } from '#domain/frame/axis-of';
import type { Grid } from '#domain/frame/grid';
import { gridReader } from '#domain/frame/grid-reader';
import { zoneBody } from '#domain/frame/zone-body';
import type { Lexicon } from '#domain/lexicon/lexicon';
import { usualLie } from '#domain/lexicon/usual-lie';

type Covering = Pick<CoveringView, 'name' | 'zone' | 'closed'>;

export interface GridLosses {
  /** Whose zone can no longer be read; they hide nothing by it any more. */
  readonly coverings: readonly { readonly name: string; readonly isClosed: boolean }[];
  /** So many that no longer lie anywhere. */
  readonly members: number;
}

export interface Placed {
  readonly members: readonly Pick<MemberView, 'setOut' | 'kind' | 'retired'>[];
  readonly coverings: readonly Covering[];
  readonly lexicon: Lexicon;
}

/** What has its place by the grid before and none by the one after. What merely moves is not lost. */
export function gridLosses(before: Grid, after: Grid, { members, coverings, lexicon }: Placed): GridLosses {
  const [old, next] = [gridReader(before), gridReader(after)];
  const zoneLost = ({ zone }: Covering) =>
    zone !== null && zoneBody(zone, old).ok && !zoneBody(zone, next).ok;
  const placeLost = ({ setOut, kind, retired }: Placed['members'][number]) => {
    if (setOut === null || retired) return false;
    const usual = usualLie(kind, lexicon);
    return axisOf(setOut, usual, old).ok && !axisOf(setOut, usual, next).ok;
  };
  return {
    coverings: coverings.filter(zoneLost).map(({ name, closed }) => ({ name, isClosed: closed !== null })),
    members: members.filter(placeLost).length,
  };
}

export const isLoss = ({ coverings, members }: GridLosses) => coverings.length > 0 || members > 0;
