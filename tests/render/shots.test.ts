import { build } from 'esbuild';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isInside } from '#domain/frame/clip';
import { roundMm, type Mm } from '#domain/frame/length';
import { memberBody } from '#domain/frame/member-body';
import { cameraOf } from '../../server/demo/render/camera.ts';
import { develop, seenMembers } from '../../server/demo/render/develop/develop.ts';
import { smoothed } from '../../server/demo/render/develop/smooth.ts';
import { CORNERS, thumbShare } from '../../server/demo/render/develop/thumb.ts';
import { newFilm } from '../../server/demo/render/light/film.ts';
import { PathTracer } from '../../server/demo/render/light/path-tracer.ts';
import { render } from '../../server/demo/render/light/render.ts';
import { SHOTS } from '../../server/demo/render/shots/shots.ts';
import { stateOnDay } from '../../server/demo/render/shots/state-on-day.ts';
import { readTruth, truthText } from '../../server/demo/render/truth/truth-file.ts';
import { takeShot, type TakenShot } from '../../server/demo/render/take-shot.ts';
import { ROOT } from '../support/project-files.ts';
import { addBox, block } from '../../server/demo/render/mesh/shapes.ts';
import { DAY, EVEN, anyBox, sceneOf, sceneOfBoxes } from './small-scenes.ts';
import { Random } from '../../server/demo/render/random.ts';

const SMALL = { width: 80, height: 60, samples: 1, detail: 0.01 };
const [FIRST, INSIDE, WALL, ROOF] = [
  'lake-side-raising',
  'inside-joists',
  'west-lath-going-on',
  'under-the-boards',
].map((name) => SHOTS.find((shot) => shot.name === name));

const seen = ({ truth }: TakenShot) => new Map(truth.members.map((member) => [member.mark, member]));

describe('a shot of the boathouse', () => {
  test('taken twice is the same to the last bit: light, file and truth', async () => {
    const [one, other] = [await takeShot(FIRST!, SMALL), await takeShot(FIRST!, SMALL)];
    for (const part of ['light', 'colour', 'shine', 'guide', 'member'] as const)
      expect(Buffer.from(one.film[part].buffer).equals(Buffer.from(other.film[part].buffer))).toBe(true);
    expect(one.jpeg.equals(other.jpeg)).toBe(true);
    expect(JSON.stringify(one.truth)).toBe(JSON.stringify(other.truth));
    const { width, height, format } = await sharp(one.jpeg).metadata();
    expect({ width, height, format }).toEqual({ width: 80, height: 60, format: 'jpeg' });
    expect(one.film.light.every((value) => value >= 0 && Number.isFinite(value))).toBe(true);
  });

  test('with more things lying about shows the same members where none of them stands before', async () => {
    const [bare, full] = [
      await takeShot(INSIDE!, SMALL),
      await takeShot(INSIDE!, { ...SMALL, detail: 0.03 }),
    ];
    const [one, other] = [seen(bare), seen(full)];
    expect([...one.keys()]).toEqual([...other.keys()]);
    for (const [mark, { outline }] of one) expect(other.get(mark)?.outline).toEqual(outline);
  });

  test('knows of each member how much of it is seen', async () => {
    const { truth } = await takeShot(FIRST!, SMALL);
    const state = stateOnDay(FIRST!);
    const pixels = truth.members.reduce((sum, member) => sum + member.pixels, 0);
    expect(pixels).toBeGreaterThan(500);
    expect(pixels).toBeLessThan(80 * 60);
    const marks = new Set(state.members.map(({ mark }) => mark));
    for (const { mark, ofWhole, ofPicture, bounds, outline, pixels: own } of truth.members) {
      expect(marks.has(mark)).toBe(true);
      expect(ofWhole).toBeLessThanOrEqual(ofPicture);
      expect(bounds === null).toBe(own === 0);
      expect(outline.length).toBeGreaterThanOrEqual(6);
      expect(Math.min(...outline)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...outline)).toBeLessThanOrEqual(80);
    }
    // The corner post nearest to the camera stands free but for rails, ties and what lies before its foot.
    expect(seen({ truth } as TakenShot).get('い一')?.ofWhole).toBeGreaterThan(0.6);
  });

  test('shows the rails of a wall with its lath, and none under the coat', async () => {
    const railsOn = async (day: number) => {
      const { truth } = await takeShot({ ...WALL!, day }, SMALL);
      return truth.members.filter(({ mark }) => /^い通り.*貫$/u.test(mark)).map(({ ofPicture }) => ofPicture);
    };
    expect(await railsOn(24)).toSatisfy(
      (shares: number[]) => shares.length === 3 && Math.min(...shares) > 0.5,
    );
    expect(await railsOn(30)).toEqual([0, 0, 0]);
  });

  test('under the roof shows rafters and purlins, and none of the ground floor through the boards', async () => {
    const { truth } = await takeShot(ROOF!, SMALL);
    const kinds = new Map<string, number>();
    for (const { kind, pixels } of truth.members)
      kinds.set(kind ?? '', (kinds.get(kind ?? '') ?? 0) + pixels);
    expect(kinds.get('taruki')).toBeGreaterThan(100);
    expect(kinds.get('moya')).toBeGreaterThan(50);
    expect(kinds.get('obiki') ?? 0).toBe(0);
  });
});

test('the truth is kept of what can be seen, in few digits', async () => {
  const { truth } = await takeShot(FIRST!, SMALL);
  const kept = readTruth(truthText(truth, FIRST!.day));
  expect(kept).toMatchObject({ width: 80, height: 60, day: 0 });
  expect(kept.members.map(({ mark }) => mark)).toEqual(
    truth.members.filter(({ pixels }) => pixels > 0).map(({ mark }) => mark),
  );
  for (const { mark, stage, pixels, ofWhole, bounds, outline } of kept.members) {
    const whole = truth.members.find((member) => member.mark === mark)!;
    expect({ stage, pixels, bounds }).toEqual({
      stage: whole.stage,
      pixels: whole.pixels,
      bounds: whole.bounds,
    });
    expect(Math.abs(ofWhole - whole.ofWhole)).toBeLessThan(0.00051);
    for (const [i, value] of outline.entries())
      expect(Math.abs(value - whole.outline[i]!)).toBeLessThanOrEqual(0.5);
  }
});

test('nobody takes a picture from within a member', () => {
  for (const shot of SHOTS) {
    const [x, y, z] = shot.view.position.map(roundMm) as [Mm, Mm, Mm];
    for (const { mark, axis } of stateOnDay(shot).members)
      expect(isInside({ x, y, z }, memberBody(axis)), mark).toBe(false);
  }
});

describe('rows and threads', () => {
  const random = new Random(8);
  const scene = sceneOfBoxes(
    Array.from({ length: 12 }, () =>
      anyBox(random, [random.about(1500), random.about(1500), random.about(900)]),
    ),
    DAY,
  );
  const camera = cameraOf(
    { position: [300, -5000, 900], lookAt: [0, 0, 0], focal35: 26 },
    { width: 48, height: 36 },
    true,
  );
  const settings = { samples: 4, seed: 5, bounces: 2 };
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-render-'));
    await build({
      absWorkingDir: ROOT,
      entryPoints: ['server/demo/render/light/render-worker.ts'],
      outfile: path.join(folder, 'render-worker.mjs'),
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'warning',
    });
  });
  afterAll(() => rm(folder, { recursive: true }));

  test('a thread of its own exposes the same film as this one', async () => {
    const here = await render(scene, camera, settings);
    const there = await render(scene, camera, settings, {
      count: 1,
      worker: path.join(folder, 'render-worker.mjs'),
    });
    expect(there.light).toEqual(here.light);
    expect(there.shine).toEqual(here.shine);
    expect(there.member).toEqual(here.member);
  });

  test('it does not matter who exposes which row when', async () => {
    const here = await render(scene, camera, settings);
    const film = newFilm(camera);
    const tracers = [new PathTracer(scene, camera, settings), new PathTracer(scene, camera, settings)];
    for (let y = film.height - 1; y >= 0; y -= 1) tracers[(y * 7) % 2]!.row(film, y);
    expect(film.light).toEqual(here.light);
    expect(film.variance).toEqual(here.variance);
  });

  test('smoothing brings few samples nearer to many', async () => {
    const heap = sceneOf((mesh) => {
      addBox(mesh, block([0, 0, -700], [6000, 6000, 100]), { material: 'card', tone: 0.6 });
      addBox(mesh, block([0, 0, -600], [900, 700, 900], 0.4), { material: 'card', tone: 0.4 });
    }, EVEN);
    const few = await render(heap, camera, { ...settings, samples: 6 });
    const many = smoothed(await render(heap, camera, { ...settings, samples: 200 }), 0);
    const error = (values: Float32Array) =>
      values.reduce((sum, value, i) => sum + (value - many[i]!) ** 2, 0);
    expect(error(smoothed(few, 2))).toBeLessThan(0.6 * error(smoothed(few, 0)));
  });

  test('faults change the photo and not what stands there, but for a thumb', async () => {
    const film = await render(scene, camera, settings);
    const mean = (bytes: Uint8Array) => bytes.reduce((sum, value) => sum + value, 0) / bytes.length;
    const plain = develop(film, 1);
    expect(develop(film, 1)).toEqual(plain);
    expect(mean(develop(film, 1, { steps: -3 }))).toBeLessThan(mean(plain) * 0.5);
    expect(develop(film, 1, { moved: [0.05, 0] })).not.toEqual(plain);
    expect(seenMembers(film, { moved: [0.05, 0] })).toBe(film.member);
    expect(thumbShare(film, 'bottom-right', 47.5, 35.5)).toBe(1);
    for (const corner of CORNERS) {
      expect(thumbShare(film, corner, 24, 18)).toBe(0);
      const under = Array.from(seenMembers(film, { thumb: corner })).filter((member) => member >= 0).length;
      expect(under).toBeLessThanOrEqual(Array.from(film.member).filter((member) => member >= 0).length);
    }
  });
});
