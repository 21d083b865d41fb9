import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundingBox, type Region } from '#domain/photo/region';
import { seenMarks, type TagInPicture } from '../../../client/finding/picture/seen-marks.ts';
import { suggestMarks } from '../../../client/screens/bench/suggest-marks.ts';
import { cameraOf, project } from '../../../server/demo/render/camera.ts';
import { demoHouse, demoPhotos } from '../../support/demo-tags.ts';
import { truthOf } from '../../support/demo-truth.ts';

const { plan, space, index } = demoHouse();
const SLOW_MS = 120_000;

const asBox = (region: Region): Region => ({ shape: 'rectangle', ...boundingBox(region) });

/** Of every `each`th tag of the demo, left out of its photo, where its mark is among what is proposed for its region. */
async function places(each: number, drawnAs: (region: Region) => Region, isSeen = true): Promise<number[]> {
  const photos = await demoPhotos();
  const trials = photos.flatMap(({ truth, tags }, i) =>
    tags.map((tag) => ({
      tag,
      here: tags.filter((other) => other.mark !== tag.mark),
      tallness: truth.height / truth.width,
      before: photos[i - 1]?.tags ?? [],
      after: photos[i + 1]?.tags ?? [],
    })),
  );
  return trials
    .filter((_, i) => i % each === 0)
    .map(({ tag, here, tallness, before, after }) => {
      const known = here.map(({ mark, region }) => ({ mark, region: drawnAs(region) }));
      const seen = isSeen ? seenMarks(known, space, index, tallness)(drawnAs(tag.region)) : [];
      const [marks, earlier, later] = [here, before, after].map((all) => all.map(({ mark }) => mark));
      const around = { last: null, here: marks ?? [], before: earlier ?? [], after: later ?? [], seen };
      return suggestMarks(around, index).findIndex(({ mark }) => mark === tag.mark);
    });
}

const amongFirst = (n: number, at: readonly number[]) => at.filter((i) => i >= 0 && i < n).length / at.length;

describe('what a photo itself says of a region', () => {
  // Against the truth of the rendered photos, which knows nothing of any tag.
  test('names the member that one tag less would name', { timeout: SLOW_MS }, async () => {
    const exact = await places(7, (region) => region);
    expect(exact.length).toBeGreaterThan(20);
    expect(amongFirst(3, exact)).toBeGreaterThan(0.9);
    const boxes = await places(7, asBox);
    expect(amongFirst(3, boxes)).toBeGreaterThan(0.8);
    expect(amongFirst(8, boxes)).toBeGreaterThan(0.85);
    // By last tag and the photos around alone it is one in six.
    expect(amongFirst(8, await places(1, asBox, false))).toBeLessThan(0.3);
  });

  test('offers the rail between two tagged rails among the first two, also where all was drawn as boxes', async () => {
    const { members, width, height } = await truthOf({ shot: 'west-lath-going-on' });
    const boxOf = (mark: string): Region => {
      const outline = members.find((member) => member.mark === mark)?.outline ?? [];
      const points = Array.from({ length: outline.length / 2 }, (_, i) => {
        const [x = 0, y = 0] = outline.slice(2 * i, 2 * i + 2);
        return [x / width, y / height] as const;
      });
      return asBox({ shape: 'polygon', points });
    };
    const tagged = ['い一', 'い四', 'い通り地貫', 'い通り床梁'];
    const tags = tagged.map((mark) => ({ mark, region: boxOf(mark) }));
    const seen = seenMarks(tags, space, index, height / width);
    const around = {
      last: null,
      here: tagged,
      before: ['三通り足固め', '又二大引', 'は通り床梁'],
      after: [],
    };
    const first = suggestMarks({ ...around, seen: seen(boxOf('い通り腰貫')) }, index).slice(0, 2);
    expect(first.map(({ mark }) => mark)).toContain('い通り腰貫');
    expect(first.every(({ why }) => why === 'seen')).toBe(true);
  });

  test('is nothing where nothing with a place is tagged', () => {
    const region: Region = { shape: 'rectangle', x: 0.4, y: 0.4, w: 0.1, h: 0.3 };
    expect(seenMarks([], space, index, 0.75)(region)).toEqual([]);
    expect(seenMarks([{ mark: 'ゑ九', region }], space, index, 0.75)(region)).toEqual([]);
  });
});

describe('from wherever a wall is photographed', () => {
  const WALL = [
    'い一',
    'い二',
    'い三',
    'い四',
    'い五',
    'い通り地貫',
    'い通り腰貫',
    'い通り内法貫',
    'い通り足固め',
  ];
  const SIZE = { width: 1600, height: 1200 };

  const view = fc.record({
    left: fc.constantFrom(...WALL),
    x: fc.double({ min: -9500, max: -6500, noNaN: true }),
    y: fc.double({ min: 1500, max: 5800, noNaN: true }),
    z: fc.double({ min: 1500, max: 2600, noNaN: true }),
    aside: fc.double({ min: -1200, max: 1200, noNaN: true }),
    roll: fc.double({ min: -3, max: 3, noNaN: true }),
  });

  /** By the renderer's pinhole, not by the one that is tested. */
  const drawnOf = (camera: ReturnType<typeof cameraOf>, mark: string): TagInPicture[] => {
    const axis = plan.axes.get(mark);
    if (!axis) return [];
    const ends = [axis.start, axis.end].map(({ x, y, z }) => project(camera, [x, y, z]));
    const points = ends.map(({ x, y }) => [x / SIZE.width, y / SIZE.height] as const);
    if (points.some(([x, y]) => x < 0.01 || x > 0.99 || y < 0.01 || y > 0.99)) return [];
    const [[ax, ay], [bx, by]] = points as [readonly [number, number], readonly [number, number]];
    const isSteep = Math.abs(bx - ax) < Math.abs(by - ay);
    const [u, v] = isSteep ? [0.006, 0] : [0, 0.006];
    const corners = [
      [ax - u, ay - v],
      [bx - u, by - v],
      [bx + u, by + v],
      [ax + u, ay + v],
    ] as const;
    return [{ mark, region: { shape: 'polygon', points: corners } }];
  };

  test('a member left out is among the first three', { timeout: SLOW_MS }, () => {
    fc.assert(
      fc.property(view, ({ left, x, y, z, aside, roll }) => {
        const from = { position: [x, y, z], lookAt: [0, 3636 + aside, 1700], roll, focal35: 26 } as const;
        const camera = cameraOf(from, SIZE, true);
        const [out] = drawnOf(camera, left);
        const tags = WALL.filter((mark) => mark !== left).flatMap((mark) => drawnOf(camera, mark));
        fc.pre(out !== undefined && tags.length >= 4);
        const seen = seenMarks(tags, space, index, SIZE.height / SIZE.width)(out.region);
        expect(seen.slice(0, 3)).toContain(left);
        // What is tagged is not offered again, and nothing twice.
        expect(seen.filter((mark) => tags.some((tag) => tag.mark === mark))).toEqual([]);
        expect(new Set(seen).size).toBe(seen.length);
      }),
      { numRuns: 12 },
    );
  });
});
