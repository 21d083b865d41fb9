import type { Context } from '../../services/context.ts';
import { readFrame, readFrameOfPhoto, stateGrid, stateRequirements } from '../../services/frame.ts';
import type { Handlers } from '../implement.ts';

export function frameHandlers(context: Context): Handlers {
  const { read } = context.store;
  return {
    readGrid: async ({ house }) => ({ grid: await read.grid(house) }),
    stateGrid: async ({ account, house, body }) => ({ grid: await stateGrid(context, account, house, body) }),
    readRequirements: async ({ house }) => ({ rows: [...(await read.requirements(house))] }),
    stateRequirements: ({ account, house, body }) => stateRequirements(context, account, house, body),
    readFrame: ({ house }) => readFrame(context, house),
    readFrameOfPhoto: ({ house, params }) => readFrameOfPhoto(context, house, params.photo),
  };
}
