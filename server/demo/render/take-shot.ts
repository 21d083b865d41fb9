import { cameraOf, isRightHanded, type Size } from './camera.ts';
import { develop, seenMembers } from './develop/develop.ts';
import { jpegOf } from './develop/jpeg.ts';
import type { Film } from './light/film.ts';
import { render, type Threads } from './light/render.ts';
import { boxOfMember } from './oriented-box.ts';
import { buildScene } from './scene/build-scene.ts';
import type { SkyKind } from './light/sky.ts';
import { seedOf, type Shot } from './shots/shot.ts';
import { stateOnDay } from './shots/state-on-day.ts';
import { sunOnDay } from './shots/sun.ts';
import { truthOf, type Truth } from './truth/truth.ts';

export interface ShotSettings extends Size {
  readonly samples: number;
  /** How much lies about, 0 to 1; members are always all there. */
  readonly detail: number;
}

export interface TakenShot {
  readonly film: Film;
  readonly jpeg: Buffer;
  readonly truth: Truth;
}

/** All pictures are of one site: the same stones on the same ground. */
const SITE_SEED = 20_260_401;
const BOUNCES = 2;

export async function takeShot(
  shot: Shot,
  { samples, detail, ...size }: ShotSettings,
  threads: Threads | null = null,
): Promise<TakenShot> {
  const state = stateOnDay(shot);
  const scene = buildScene(state, { seed: SITE_SEED, detail, sky: skyOf(shot) });
  const seed = seedOf(shot);
  const camera = cameraOf(shot.view, size, isRightHanded(state.reader.grid));
  const film = await render(scene, camera, { samples, seed, bounces: BOUNCES }, threads);
  const members = state.members.map((member) => ({ ...member, box: boxOfMember(member.axis) }));
  return {
    film,
    jpeg: await jpegOf(develop(film, seed, shot.faults), size),
    truth: truthOf(camera, members, seenMembers(film, shot.faults)),
  };
}

const OVERCAST: SkyKind = { kind: 'even', radiance: 0.95 };

function skyOf({ day, time, clouds }: Shot): SkyKind {
  if (clouds === 'overcast') return OVERCAST;
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return { kind: 'day', sun: sunOnDay(day, hours + minutes / 60), clouds };
}
