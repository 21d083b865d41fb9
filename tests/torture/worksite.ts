import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import type { HouseView } from '#domain/contract/views';
import type { PlaceForDatabase } from '../support/databases.ts';
import { Client, newHouse, OWNER } from '../support/server.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';
import { MARKS } from './crew.ts';

export interface Worksite {
  readonly place: Place;
  readonly house: string;
  /** A client of the server that runs now; the access token outlives each of them. */
  clientOf(server: ServerProcess): Client;
  remove(): Promise<void>;
}

/** A data folder with a house whose members are in the schedule, made by a first server that then goes. */
export async function prepareWorksite(made: PlaceForDatabase): Promise<Worksite> {
  const dataFolder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-torture-'));
  const place = placeIn(dataFolder, made);
  const server = await ServerProcess.start(place);
  const owner = new Client(server.origin);
  await owner.post('/session', OWNER);
  const { secret } = await owner.post<{ secret: string }>('/tokens', { id: randomUUID(), name: 'crew' });
  const house: HouseView = await newHouse(owner, '谷の舟小屋');
  for (const mark of MARKS)
    await owner.put(`/houses/${house.id}/members/${encodeURIComponent(mark)}`, { kind: '柱' });
  await server.stop();
  return {
    place,
    house: house.id,
    clientOf: ({ origin }) => new Client(origin, secret),
    remove: async () => {
      await rm(dataFolder, { recursive: true, force: true });
      await made.remove();
    },
  };
}

/** The embedded database lies in the data folder itself, as it does for a person. */
export function placeIn(dataFolder: string, { config }: PlaceForDatabase): Place {
  const embedded = { kind: 'embedded' as const, folder: path.join(dataFolder, 'database') };
  return { dataFolder, database: config.kind === 'embedded' ? embedded : config };
}
