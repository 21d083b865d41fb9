import { Worker } from 'node:worker_threads';
import type { Camera } from '../camera.ts';
import { sharedInts } from '../mesh/shared-memory.ts';
import { newFilm, type Film } from './film.ts';
import { PathTracer } from './path-tracer.ts';
import type { Scene, Settings } from './scene.ts';

/** What a worker is handed; everything large in it is shared memory. */
export interface RenderOrder {
  readonly scene: Scene;
  readonly camera: Camera;
  readonly settings: Settings;
  readonly film: Film;
  /** The next row that nobody has taken. */
  readonly nextRow: Int32Array;
}

export interface Threads {
  readonly count: number;
  /** The built render-worker. */
  readonly worker: string;
}

/** Exposes a picture, here or in as many threads as are given: the same film to the last bit. */
export async function render(
  scene: Scene,
  camera: Camera,
  settings: Settings,
  threads: Threads | null = null,
): Promise<Film> {
  const film = newFilm(camera);
  const order: RenderOrder = { scene, camera, settings, film, nextRow: sharedInts(1) };
  if (threads === null || threads.count < 1) exposeRows(order);
  else await Promise.all(Array.from({ length: threads.count }, () => inThread(threads.worker, order)));
  return film;
}

/** Takes rows until there are none. */
export function exposeRows({ scene, camera, settings, film, nextRow }: RenderOrder): void {
  const tracer = new PathTracer(scene, camera, settings);
  for (let y = Atomics.add(nextRow, 0, 1); y < film.height; y = Atomics.add(nextRow, 0, 1))
    tracer.row(film, y);
}

function inThread(file: string, order: RenderOrder): Promise<void> {
  const worker = new Worker(file, { workerData: order });
  return new Promise((resolve, reject) => {
    worker.once('error', reject);
    worker.once('exit', (code) =>
      code === 0 ? resolve() : reject(new Error(`A thread that renders ended with ${code}.`)),
    );
  });
}
