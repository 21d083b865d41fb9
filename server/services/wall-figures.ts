import type { WallFiguresView } from '#domain/contract/wall-views';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mark } from '#domain/frame/mark';
import { wallCheck, type WallResult } from '#domain/frame/wall-check';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { findKind } from '#domain/lexicon/track-of-kind';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** What the schedule says of the wall that a covering takes, beside published figures. */
export async function readWallFigures(
  context: Context,
  house: string,
  covering: string,
): Promise<WallFiguresView> {
  const { read } = context.store;
  const found = await read.covering(covering);
  if (!found) throw new Failure('not-found', { what: 'covering' });
  if (found.zone?.shape !== 'wall') return { told: false, because: 'no-wall' };
  const grid = await read.grid(house);
  if (!grid) return { told: false, because: 'no-grid' };
  const lexicon = lexiconOf(await read.terms(house));
  const members = (await read.frameMembers(house, await read.zone(house))).filter(({ retired }) => !retired);
  const kinds = new Map(
    members.map(({ mark, kind }) => [mark as string, findKind(kind, lexicon)?.id ?? null]),
  );
  const check = wallCheck(found.zone, members, (mark) => kinds.get(mark) ?? null, gridReader(grid));
  if (!check.ok) return { told: false, because: 'zone-impossible' };
  const { id, source, edition, from, until, unconfirmed, notLookedAt } = check.ruleSet;
  return {
    told: true,
    ruleSet: {
      ...{ id, source, edition, from, until },
      ...{ unconfirmed: [...unconfirmed], notLookedAt: [...notLookedAt] },
    },
    caution: check.caution,
    results: check.results.map(toView),
  };
}

function toView({ looked, differing, figure, ...result }: WallResult) {
  return { ...result, figure: { ...figure }, looked: marks(looked), differing: marks(differing) };
}

const marks = (all: readonly string[]) => all.map((mark) => mark as Mark);
