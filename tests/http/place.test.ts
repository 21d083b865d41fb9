import { afterAll, beforeAll, expect, it } from 'vitest';
import type {
  HouseView,
  LedgerEntryView,
  PhotoPlaceView,
  PhotoView,
  UploadOutcome,
} from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

/** 62 m north-east of the site, as a phone writes it. */
const GPS = {
  ...{ GPSLatitudeRef: 'N', GPSLatitude: '35/1 0/1 43179/1000' },
  ...{ GPSLongitudeRef: 'E', GPSLongitude: '135/1 46/1 689/100' },
  ...{ GPSImgDirectionRef: 'M', GPSImgDirection: '3515/10', GPSHPositioningError: '5/1' },
};
const SITE = { lat: 35.0116, lon: 135.7681 };
const DEVICE = { lat: 35.0119, lon: 135.7684, errorM: 12.5, measuredAt: '2026-04-01T01:00:00.000Z' };

describeOverEitherDatabase('the place of a photo', (make) => {
  let where: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let house: HouseView;
  beforeAll(async () => {
    where = await make();
    server = await startServer(where);
    owner = server.owner;
    house = await newHouse(owner);
  });
  afterAll(async () => {
    await server.close();
    await where.remove();
  });

  const add = async (seed: number, gps: Record<string, string> = {}): Promise<PhotoView> => {
    const bytes = await makeJpeg(seed, takenAt('2026-04-01T09:30:00'), undefined, gps);
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: `${seed}.jpg`, bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo;
  };
  const read = (photo: string) => owner.get<PhotoView>(`/photos/${photo}`);
  const said = async (kind: string) =>
    (await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`)).entries.filter(
      (entry) => entry.kind === kind,
    );

  it('follows from its file, and again when the house says where the site is', async () => {
    const { id, place } = await add(1, GPS);
    // −8.2° at Kyoto in 2026 (World Magnetic Model).
    expect(place).toMatchObject({
      position: { errorM: 5, errorStated: true, datum: 'wgs-84' },
      heading: { trueDegrees: expect.closeTo(343.3, 1), stated: 351.5, flags: [] },
      ...{ site: null, device: null },
    });
    await owner.patch(`/houses/${house.id}`, { site: SITE });
    expect((await owner.get<HouseView>(`/houses/${house.id}`)).site).toEqual({ ...SITE, radiusM: 100 });
    expect((await read(id)).place.site).toMatchObject({ verdict: 'on-site' });
    await owner.patch(`/houses/${house.id}`, { site: { ...SITE, radiusM: 60 } });
    expect((await read(id)).place.site?.verdict).not.toBe('on-site');
    await owner.patch(`/houses/${house.id}`, { site: { lat: 35.1, lon: SITE.lon } });
    expect((await owner.get<HouseView>(`/houses/${house.id}`)).site?.radiusM).toBe(60);
    expect((await read(id)).place.site).toMatchObject({
      verdict: 'off-site',
      azimuth: expect.closeTo(180, 0),
    });
    await owner.patch(`/houses/${house.id}`, { site: null });
    expect((await read(id)).place.site).toBeNull();
  });

  it('has the position of the device beside it, said once, and decided by nobody', async () => {
    await owner.patch(`/houses/${house.id}`, { site: SITE });
    const { id } = await add(2);
    const address = `/photos/${id}/device-position`;
    const answer = await owner.put<PhotoView>(address, DEVICE);
    expect(answer.place).toMatchObject({ position: null, site: null, device: { ...DEVICE, by: {} } });
    await owner.put(address, DEVICE);
    expect(await said('photo.position-added')).toHaveLength(1);
    await owner.put(address, { ...DEVICE, errorM: 8 });
    expect((await read(id)).place.device?.errorM).toBe(8);
    expect(await said('photo.position-added')).toHaveLength(2);
  });

  it.each([
    ['latitude 91', { lat: 91 }],
    ['longitude 181', { lon: 181 }],
    ['no number', { lat: null }],
    ['0, 0', { lat: 0, lon: 0 }],
    ['an error below zero', { errorM: -1 }],
    ['an error round the earth', { errorM: 3e7 }],
    ['no time', { measuredAt: 'yesterday' }],
    ['a word too many', { heading: 5 }],
  ])('refuses %s', async (_name, change) => {
    const { id } = await add(3);
    const put = owner.put(`/photos/${id}/device-position`, { ...DEVICE, ...change });
    await expect(put).rejects.toMatchObject({ status: 400, problem: { code: 'invalid-request' } });
    expect((await read(id)).place.device).toBeNull();
  });

  it.each([
    { lat: 35, lon: 135, radiusM: 9 },
    { lat: 35, lon: 135, radiusM: 1e5 },
    { lat: 95, lon: 135 },
  ])('refuses the site %j', async (site) => {
    await expect(owner.patch(`/houses/${house.id}`, { site })).rejects.toMatchObject({ status: 400 });
  });

  it('is told of all photos that have one, and of how many have none', async () => {
    await add(4);
    const list = (query = '') =>
      owner.get<{ photos: PhotoPlaceView[]; without: number }>(`/houses/${house.id}/photo-places${query}`);
    const all = await list();
    expect(all.photos.map(({ fileName }) => fileName).sort()).toEqual(['1.jpg', '2.jpg']);
    expect(all.without).toBe(2);
    expect(all.photos.map(({ day }) => day)).toEqual(['2026-04-01', '2026-04-01']);
    expect((await list('?day=2026-04-02')).photos).toEqual([]);
  });

  it('is nobody else’s business', async () => {
    const stranger = await server.join((await newHouse(owner, 'Tea house')).id, 'ren@example.org');
    const { id } = await add(1, GPS);
    for (const ask of [
      () => stranger.get(`/houses/${house.id}/photo-places`),
      () => stranger.put(`/photos/${id}/device-position`, DEVICE),
    ])
      await expect(ask()).rejects.toMatchObject({ status: 404 });
  });
});
