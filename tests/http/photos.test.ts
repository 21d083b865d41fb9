import { createHash, randomUUID } from 'node:crypto';
import { readFile, readdir } from 'node:fs/promises';
import { connect } from 'node:net';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { HouseView, PhotoView, UploadOutcome } from '#domain/contract/views';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { HttpProblem, newHouse, startServer, type TestServer } from '../support/server.ts';

interface Results {
  results: UploadOutcome[];
}

describeOverBothDatabases('photos over HTTP', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const upload = async (files: { name: string; bytes: Uint8Array }[]) =>
    (await server.owner.upload<Results>(house.id, files)).results;
  const picturesOf = async (photo: string): Promise<PhotoView['pictures']> => {
    for (let i = 0; i < 200; i++) {
      const { pictures } = await server.owner.get<PhotoView>(`/photos/${photo}`);
      if (pictures !== 'pending') return pictures;
      await sleep(50);
    }
    return 'pending';
  };
  const addedOf = (outcome: UploadOutcome | undefined): PhotoView => {
    if (outcome?.outcome === 'refused' || !outcome) throw new Error(JSON.stringify(outcome));
    return outcome.photo;
  };

  it('keeps the original byte for byte, dates it, and makes upright pictures', async () => {
    const bytes = await makeJpeg(1, takenAt('2026-04-01T09:30:00'));
    const [outcome] = await upload([{ name: '写真 一.jpg', bytes }]);
    const photo = addedOf(outcome);
    expect(outcome?.outcome).toBe('added');
    expect(photo).toMatchObject({
      fileName: '写真 一.jpg',
      mediaType: 'image/jpeg',
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
      width: 640,
      height: 480,
      capture: {
        state: 'dated',
        instant: '2026-04-01T00:30:00.000Z',
        day: '2026-04-01',
        source: 'own-offset',
      },
    });
    const original = await server.owner.raw('GET', `/photos/${photo.id}/original`);
    expect(Buffer.from(await original.arrayBuffer()).equals(bytes)).toBe(true);
    expect(original.headers.get('content-type')).toBe('image/jpeg');
    expect(original.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await picturesOf(photo.id)).toBe('ready');
    for (const [size, width] of [
      ['thumb', 320],
      ['preview', 640],
    ] as const) {
      const response = await server.owner.raw('GET', `/photos/${photo.id}/${size}`);
      const meta = await sharp(Buffer.from(await response.arrayBuffer())).metadata();
      expect([meta.format, meta.width, meta.exif]).toEqual(['jpeg', width, undefined]);
    }
  });

  it('says beforehand which content the house has, and of another house nothing', async () => {
    const bytes = await makeJpeg(702);
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const known = (of: HouseView) =>
      server.owner.get<{ photo: PhotoView | null }>(`/houses/${of.id}/photos/known?sha256=${sha256}`);
    expect(await known(house)).toEqual({ photo: null });
    const photo = addedOf((await upload([{ name: 'two.jpg', bytes }]))[0]);
    expect((await known(house)).photo?.id).toBe(photo.id);
    expect(await known(await newHouse(server.owner, 'Tea house'))).toEqual({ photo: null });
  });

  it('takes the same bytes once, alone or many at the same time', async () => {
    const bytes = await makeJpeg(2);
    const all = await Promise.all(Array.from({ length: 6 }, (_, i) => upload([{ name: `${i}.jpg`, bytes }])));
    const outcomes = all.flat();
    expect(new Set(outcomes.map((o) => addedOf(o).id)).size).toBe(1);
    expect(outcomes.filter((o) => o.outcome === 'added')).toHaveLength(1);
    expect((await upload([{ name: 'again.jpg', bytes }]))[0]?.outcome).toBe('already-here');
  });

  it('refuses what cannot be taken with a sentence that names the file, and goes on with the rest', async () => {
    const good = await makeJpeg(3);
    const results = await upload([
      { name: 'empty.jpg', bytes: new Uint8Array() },
      { name: 'page.jpg', bytes: Buffer.from('<html><script>alert(1)</script></html>') },
      { name: 'good.jpg', bytes: good },
      { name: 'cut.jpg', bytes: good.subarray(0, 300) },
      { name: '../../etc/passwd', bytes: Buffer.from('root:x:0:0') },
    ]);
    const codes = results.map((r) => (r.outcome === 'refused' ? r.problem.code : r.outcome));
    expect(codes.slice(0, 3)).toEqual(['photo-empty', expect.stringMatching(/^photo-/) as string, 'added']);
    expect(codes.slice(3)).toEqual(['photo-damaged', 'photo-not-an-image']);
    for (const result of results) {
      if (result.outcome !== 'refused') continue;
      expect(result.problem.detail).toContain(result.fileName);
      expect(result.problem.detail).not.toMatch(/\{|…|\/tmp/);
    }
    expect(results[4]?.fileName).toBe('passwd');
  });

  it('refuses a file over 100 MB, takes the one after it, and leaves nothing behind', async () => {
    const good = await makeJpeg(4);
    const large = Buffer.concat([good, Buffer.alloc(101 * 1024 * 1024)]);
    const results = await upload([
      { name: 'huge.jpg', bytes: large },
      { name: 'after.jpg', bytes: await makeJpeg(5) },
    ]);
    expect(results[0]).toMatchObject({
      outcome: 'refused',
      problem: { code: 'file-too-large', params: { limit: 100 } },
    });
    expect(results[1]?.outcome).toBe('added');
    expect(await readdir(path.join(server.dataFolder, 'incoming'))).toEqual([]);
  });

  it('takes nothing of an upload that is cut off half way', async () => {
    const before = (await server.owner.get<{ total: number }>(`/houses/${house.id}/photos`)).total;
    const bytes = await makeJpeg(6);
    const { secret } = await server.owner.post<{ secret: string }>('/tokens', {
      id: crypto.randomUUID(),
      name: 'cut',
    });
    const { port } = new URL(server.running.origin);
    const socket = connect(Number(port), '127.0.0.1');
    const head =
      '--x\r\nContent-Disposition: form-data; name="photos"; filename="half.jpg"\r\nContent-Type: image/jpeg\r\n\r\n';
    socket.write(
      `POST /api/v1/houses/${house.id}/photos HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nAuthorization: Bearer ${secret}\r\n` +
        `Content-Type: multipart/form-data; boundary=x\r\nContent-Length: ${head.length + bytes.length + 9}\r\n\r\n${head}`,
    );
    socket.write(bytes.subarray(0, bytes.length - 20));
    await sleep(300);
    socket.destroy();
    await sleep(700);
    expect((await server.owner.get<{ total: number }>(`/houses/${house.id}/photos`)).total).toBe(before);
    expect(await readdir(path.join(server.dataFolder, 'incoming'))).toEqual([]);
    expect((await upload([{ name: 'half.jpg', bytes }]))[0]?.outcome).toBe('added');
  });

  it('says so when a request brings no photo at all', async () => {
    const form = new FormData();
    form.append('photos', 'not a file');
    const response = await server.owner.raw('POST', `/houses/${house.id}/photos`, { body: form });
    expect(await response.json()).toMatchObject({ status: 422, code: 'no-photo-in-request' });
    const other = new FormData();
    other.append('pictures', new Blob([Uint8Array.from(await makeJpeg(7))]), 'x.jpg');
    const wrong = await server.owner.raw('POST', `/houses/${house.id}/photos`, { body: other });
    expect(await wrong.json()).toMatchObject({ status: 422, code: 'no-photo-in-request' });
    const bare = await server.owner.raw('POST', `/houses/${house.id}/photos`);
    const detail = 'This address does not take a body without a type.';
    expect(await bare.json()).toMatchObject({ status: 415, detail });
  });

  it('pages through photos in order of capture, undated ones last, each exactly once', async () => {
    const other = await newHouse(server.owner, 'Paging');
    for (const [i, time] of [
      '2026-04-03T10:00:00',
      '2026-04-01T10:00:00',
      '',
      '2026-04-02T23:59:59',
      '',
    ].entries())
      await server.owner.upload(other.id, [
        { name: `${i}.jpg`, bytes: await makeJpeg(20 + i, time ? takenAt(time) : {}) },
      ]);
    const seen: PhotoView[] = [];
    let after = '';
    do {
      const page = await server.owner.get<{ photos: PhotoView[]; next: string | null; total: number }>(
        `/houses/${other.id}/photos?limit=2${after && `&after=${after}`}`,
      );
      expect(page.total).toBe(5);
      seen.push(...page.photos);
      after = page.next ?? '';
    } while (after);
    expect(seen.map((photo) => photo.fileName).slice(0, 3)).toEqual(['1.jpg', '3.jpg', '0.jpg']);
    expect(seen.slice(3).map((photo) => photo.capture.state)).toEqual(['undated', 'undated']);
    expect(new Set(seen.map((photo) => photo.id)).size).toBe(5);
    const day = await server.owner.get<{ photos: PhotoView[] }>(`/houses/${other.id}/photos?day=2026-04-02`);
    expect(day.photos.map((photo) => photo.fileName)).toEqual(['3.jpg']);
  });

  it('pages through the newest day first, each day in order of capture, undated ones last or apart', async () => {
    const other = await newHouse(server.owner, 'Newest first');
    const times = [
      '2026-04-01T10',
      '2026-04-02T08',
      '',
      '2026-04-02T17',
      '1999-12-31T10',
      '',
      '2026-04-01T09',
    ];
    for (const [i, time] of times.entries())
      await server.owner.upload(other.id, [
        { name: `${time}.jpg`, bytes: await makeJpeg(40 + i, time ? takenAt(`${time}:00:00`) : {}) },
      ]);
    const list = async (query: string, after: string | null = null): Promise<string[]> => {
      const page = await server.owner.get<{ photos: PhotoView[]; next: string | null }>(
        `/houses/${other.id}/photos?limit=2&${query}${after === null ? '' : `&after=${after}`}`,
      );
      const names = page.photos.map(({ fileName }) => fileName.replace('.jpg', ''));
      return page.next === null ? names : [...names, ...(await list(query, page.next))];
    };
    const newestFirst = ['2026-04-02T08', '2026-04-02T17', '2026-04-01T09', '2026-04-01T10', '1999-12-31T10'];
    expect(await list('order=newest-day')).toEqual([...newestFirst, '', '']);
    expect(await list('order=newest-day&dated=1')).toEqual(newestFirst);
    expect(await list('order=newest-day&dated=0')).toEqual(['', '']);
    expect(await list('dated=1')).toEqual(newestFirst.toSorted());
    expect((await server.owner.raw('GET', `/houses/${other.id}/photos?order=oldest`)).status).toBe(400);
  });

  it('cuts a part out of the original by a media fragment, and refuses what is no part of it', async () => {
    const halves = await sharp({ create: { width: 400, height: 200, channels: 3, background: '#000000' } })
      .composite([
        {
          input: { create: { width: 200, height: 200, channels: 3, background: '#ff0000' } },
          left: 200,
          top: 0,
        },
      ])
      .jpeg({ quality: 95 })
      .toBuffer();
    const photo = addedOf((await upload([{ name: 'halves.jpg', bytes: halves }]))[0]);
    const crop = async (xywh: string) =>
      server.owner.raw('GET', `/photos/${photo.id}/crop?xywh=${encodeURIComponent(xywh)}`);
    const right = await crop('percent:50,0,50,100');
    const { channels } = await sharp(Buffer.from(await right.arrayBuffer())).stats();
    expect(channels[0]?.mean).toBeGreaterThan(240);
    const left = await crop('pixel:0,0,200,200');
    expect((await sharp(Buffer.from(await left.arrayBuffer())).stats()).channels[0]?.mean).toBeLessThan(15);
    for (const wrong of [
      'percent:0,0,150,50',
      'percent:-1,0,10,10',
      '0,0,0,0',
      'pixel:500,0,10,10',
      'nonsense',
    ])
      expect((await crop(wrong)).status, wrong).toBe(422);
  });

  it('cuts out what a tag shows, a long rail with its surroundings and outlined', async () => {
    const grey = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#808080' } })
      .jpeg({ quality: 95 })
      .toBuffer();
    const add = async (name: string, bytes: Buffer) => addedOf((await upload([{ name, bytes }]))[0]);
    const photo = await add('grey.jpg', grey);
    const cut = async (w: number, h: number) => {
      const id = randomUUID();
      const region = { shape: 'rectangle', x: 0.2, y: 0.4, w, h };
      const said = { id, mark: 'い一', stage: 'raised', region, note: '' };
      await server.owner.post(`/photos/${photo.id}/tags`, said);
      return { id, answer: await server.owner.raw('GET', `/tags/${id}/crop`) };
    };
    const read = async ({ answer }: { answer: Response }) => {
      const { data, info } = await sharp(Buffer.from(await answer.arrayBuffer()))
        .raw()
        .toBuffer({ resolveWithObject: true });
      let isColoured = false;
      for (let i = 0; i < data.length; i += 3) isColoured ||= (data[i] ?? 0) - (data[i + 2] ?? 0) > 60;
      return { width: info.width, height: info.height, isColoured };
    };
    expect(await read(await cut(0.4, 0.4))).toEqual({ width: 400, height: 300, isColoured: false });
    const rail = await cut(0.48, 0.02);
    expect(await read(rail)).toEqual({ width: 480, height: 160, isColoured: true });
    expect((await server.owner.raw('GET', `/tags/${randomUUID()}/crop`)).status).toBe(404);
    expect((await server.owner.raw('GET', `/photos/${photo.id}/crop`)).status).toBe(400);
  });

  it('tells whoever looks at the house when a photo is added and when its pictures are made', async () => {
    const controller = new AbortController();
    const stream = await server.owner.raw('GET', `/houses/${house.id}/events`, { signal: controller.signal });
    const events: string[] = [];
    const reading = (async () => {
      for await (const chunk of stream.body as unknown as AsyncIterable<Uint8Array>)
        events.push(new TextDecoder().decode(chunk));
    })().catch(() => undefined);
    const photo = addedOf((await upload([{ name: 'live.jpg', bytes: await makeJpeg(8) }]))[0]);
    await picturesOf(photo.id);
    await sleep(300);
    controller.abort();
    await reading;
    expect(events.join('')).toContain(`"kind":"photo.added","photo":"${photo.id}"`);
    expect(events.join('')).toContain(`{"type":"pictures","photo":"${photo.id}","pictures":"ready",`);
  });

  it('stores the original under its content, whole', async () => {
    const bytes = await makeJpeg(9);
    const { sha256 } = addedOf((await upload([{ name: 'x.jpg', bytes }]))[0]);
    const stored = await readFile(path.join(server.dataFolder, 'originals', sha256.slice(0, 2), sha256));
    expect(stored.equals(bytes)).toBe(true);
  });

  it('gives nobody else a photo, its pictures or its parts', async () => {
    const [photo] = (await server.owner.get<{ photos: PhotoView[] }>(`/houses/${house.id}/photos`)).photos;
    const stranger = await server.join((await newHouse(server.owner, 'Other')).id, 'other@example.org');
    for (const part of ['', '/original', '/preview', '/thumb', '/crop?xywh=percent:0,0,50,50'])
      expect((await stranger.raw('GET', `/photos/${photo?.id}${part}`)).status, part).toBe(404);
    await expect(stranger.post(`/photos/${photo?.id}/tags`, {})).rejects.toThrow(HttpProblem);
  });
});
