import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import type { Config } from './config.ts';
import { BuildClock } from './demo/site/build-clock.ts';
import { carryOut } from './demo/site/carry-out.ts';
import { DOORS, openDoors } from './demo/site/doors.ts';
import { freePort } from './demo/site/free-port.ts';
import { picturesMade } from './demo/site/pictures-made.ts';
import { tellingOf } from './demo/site/progress.ts';
import { readPhotos } from './demo/site/read-photos.ts';
import { raisingFor } from './demo/story/build-time.ts';
import type { PhotoRow } from './demo/story/photo.ts';
import { SITE } from './demo/story/site.ts';
import { storyOf } from './demo/story/story.ts';
import { serve } from './serve.ts';

export interface DemoOrder {
  /** Of the program itself; null: any that is free. */
  readonly port: number | null;
  /** Where the pictures and their truths lie. */
  readonly photoFolder: string;
  readonly photos: readonly PhotoRow[];
  readonly now: Date;
  /** Ends it also while it is still being made ready. */
  readonly signal: AbortSignal;
  /** Says a line to whoever waits. */
  readonly say: (line: string) => void;
}

export interface Demo {
  readonly origin: string;
  readonly house: string;
  /** All that it writes lies here. */
  readonly folder: string;
  /** Addresses that sign a browser in, with what is to be seen there. */
  readonly doors: readonly { readonly address: string; readonly says: string }[];
  /** Ends the program and removes the folder. */
  stop(): Promise<void>;
}

type Undo = () => Promise<unknown>;

/** The ordinary program over a folder of its own, and in it a house in the middle of its build. */
export async function startDemo(order: DemoOrder): Promise<Demo> {
  const undo: Undo[] = [];
  const stop = async () => {
    for (let step = undo.pop(); step; step = undo.pop()) await step();
  };
  try {
    return { ...(await start(order, undo)), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

async function start(order: DemoOrder, undo: Undo[]): Promise<Omit<Demo, 'stop'>> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-demo-'));
  undo.push(() => rm(folder, { recursive: true, force: true }));
  const raising = raisingFor(order.now);
  const photos = await readPhotos(order.photoFolder, order.photos, raising);
  const story = storyOf(raising, SITE, photos);
  const clock = new BuildClock();
  const port = order.port ?? (await freePort());
  const running = await serve(configFor(folder, port), { now: clock.now });
  undo.push(() => running.stop());
  const instance = {
    ...{ origin: `http://${LOOPBACK}:${port}`, firstLink: running.firstLink },
    ...{ at: clock.set, signal: order.signal },
  };
  const jpegs = new Map(photos.map(({ name, jpeg }) => [name, jpeg]));
  const crew = await carryOut(instance, story, jpegs, tellingOf(story, order.say));
  order.say('Making their pictures …');
  await picturesMade(crew.carpenter, story.house, order.signal);
  clock.run();
  const doors = await openDoors(crew, `${running.origin}/houses/${story.house}`);
  undo.push(() => doors.close());
  return {
    ...{ origin: running.origin, house: story.house, folder },
    doors: DOORS.map(({ who, says }) => ({ address: `http://${NAME}:${doors.port}/${who}`, says })),
  };
}

const LOOPBACK = '127.0.0.1';
/** By this name, so that the cookie of a record of one's own at 127.0.0.1 stays what it is. */
const NAME = 'localhost';

function configFor(dataFolder: string, port: number): Config {
  return {
    ...{ host: LOOPBACK, port, origin: `http://${NAME}:${port}`, proxies: [] },
    ...{ dataFolder, database: { kind: 'embedded', folder: path.join(dataFolder, 'database') } },
    ...{ role: 'all', logLevel: 'error', timestamps: null, owner: null },
  };
}
