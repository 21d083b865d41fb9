import { afterAll, beforeAll, expect, it } from 'vitest';
import type { PhotoView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

describeOverEitherDatabase('asking for some of the photos', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  it('narrows the list by stage and by who added, counts it by day, and says who has added', async () => {
    const other = await newHouse(server.owner, 'Narrowing');
    const mio = await server.join(other.id, 'mio@example.org');
    const send = async (who: typeof mio, name: string, seed: number, time: string) => {
      const bytes = await makeJpeg(seed, time ? takenAt(time) : {});
      const { results } = await who.upload<{ results: UploadOutcome[] }>(other.id, [{ name, bytes }]);
      const [outcome] = results;
      if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
      return outcome.photo.id;
    };
    const morning = await send(server.owner, 'morning', 60, '2026-04-02T08:00:00');
    const noon = await send(mio, 'noon', 61, '2026-04-02T12:00:00');
    const before = await send(mio, 'before', 62, '2026-04-01T12:00:00');
    const never = await send(mio, 'never', 63, '');
    const tag = (photo: string, mark: string, stage: string) =>
      mio.post(`/photos/${photo}/tags`, {
        id: crypto.randomUUID(),
        mark,
        stage,
        region: { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.2, h: 0.2 },
      });
    await tag(noon, 'い一', 'raised');
    await tag(noon, 'い二', 'pegged');
    await tag(morning, 'い一', 'pegged');
    const base = `/houses/${other.id}`;
    const order = async (query: string) =>
      (await mio.get<{ photos: string[] }>(`${base}/photo-order?${query}`)).photos;
    expect(await order('')).toEqual([before, morning, noon, never]);
    expect(await order('stage=pegged')).toEqual([morning, noon]);
    // One tag of both: い一 stands on the noon photo, and something is pegged there, but not い一.
    expect(await order(`stage=pegged&mark=${encodeURIComponent('い一')}`)).toEqual([morning]);
    expect(await order('untagged=1')).toEqual([before, never]);
    const { people } = await mio.get<{ people: { id: string; name: string; photos: number }[] }>(
      `${base}/photo-people`,
    );
    expect(people.map(({ name, photos }) => [name, photos])).toEqual([
      ['mio', 3],
      ['owner', 1],
    ]);
    expect(await order(`by=${people[1]?.id}`)).toEqual([morning]);
    const counts = await mio.get(`${base}/photo-days?by=${people[0]?.id}&place=${noon}`);
    expect(counts).toEqual({
      days: [
        { day: '2026-04-02', photos: 1 },
        { day: '2026-04-01', photos: 1 },
      ],
      undated: 1,
      place: { day: '2026-04-02', position: 0 },
    });
    const page = await mio.get<{ photos: PhotoView[] }>(`${base}/photos?day=2026-04-02&offset=1`);
    expect(page.photos.map(({ id }) => id)).toEqual([noon]);
    expect((await mio.raw('GET', `${base}/photos?stage=painted`)).status).toBe(400);
    const stranger = await server.join((await newHouse(server.owner)).id, 'stranger@example.org');
    for (const part of ['photo-order', 'photo-days', 'photo-people'])
      expect((await stranger.raw('GET', `${base}/${part}`)).status, part).toBe(404);
  });
});
