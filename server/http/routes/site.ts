import type { Context } from '../../services/context.ts';
import { readShotList } from '../../services/shot-list.ts';
import { readWallFigures } from '../../services/wall-figures.ts';
import type { Handlers } from '../implement.ts';

export function siteHandlers(context: Context): Handlers {
  return {
    shotList: ({ house, query }) => readShotList(context, house, query.days),
    wallFigures: ({ house, params }) => readWallFigures(context, house, params.covering),
  };
}
