import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { HouseView, TagView, UploadOutcome } from '#domain/contract/views';
import { touchedBy, type HouseData } from '../../client/live/touched-parts.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

const DEVICE = { lat: 35, lon: 135, errorM: 12, measuredAt: '2026-04-01T01:00:00.000Z' };
const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };

describeOverEitherDatabase('what a statement changes on the screens', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let photos: string[];
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
    await server.owner.raw('POST', `/houses/${house.id}/schedule?fileName=a.csv`, {
      body: '番付,部材\nい一,柱\nい二,柱',
      headers: { 'content-type': 'text/csv' },
    });
    await server.owner.post(`/houses/${house.id}/coverings`, {
      id: crypto.randomUUID(),
      name: 'wall',
      kind: 'plaster',
      plannedDay: '2026-04-20',
      hides: [{ mark: 'い一', least: 'pegged' }],
    });
    photos = [await addPhoto(1), await addPhoto(2, '2079-04-01T09:30:00')];
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const addPhoto = async (seed: number, wallTime = '2026-04-01T09:30:00'): Promise<string> => {
    const bytes = await makeJpeg(seed, takenAt(wallTime));
    const { results } = await server.owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: `${seed}.jpg`, bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo.id;
  };
  /** Everything that the screens read, as text: a part, or one photo of it. */
  const readAll = async (): Promise<Record<string, string>> => {
    const base = `/houses/${house.id}`;
    const addresses: Record<string, string[]> = {
      facts: [base],
      ground: [`${base}/grid`, `${base}/requirements`, `${base}/terms`],
      people: [`${base}/people`],
      members: [`${base}/members`, `${base}/members/${encodeURIComponent('い一')}`],
      photos: [
        `${base}/photos`,
        `${base}/photo-places`,
        `${base}/photos?untagged=1`,
        `${base}/photos?mark=${encodeURIComponent('い一')}`,
      ],
      coverings: [`${base}/coverings`, `${base}/protections`],
      report: [`${base}/closing-report`, `${base}/frame`, `${base}/shot-list?days=all`],
      days: [
        `${base}/days`,
        `${base}/days/2026-04-01`,
        `${base}/days/${new Date().toISOString().slice(0, 10)}`,
      ],
      findings: [`${base}/findings`],
      ledger: [`${base}/ledger`],
      [`photo ${photos[0]}`]: [`/photos/${photos[0]}`],
      [`photo ${photos[1]}`]: [`/photos/${photos[1]}`],
    };
    const entries = Object.entries(addresses).map(async ([part, all]) => {
      const answers = await Promise.all(all.map((address) => server.owner.get<object>(address)));
      // When a report was made is no part of what it says.
      return [part, JSON.stringify(answers.map((answer) => ({ ...answer, asOf: '' })))] as const;
    });
    return Object.fromEntries(await Promise.all(entries));
  };

  it('is never more than what is read again after it', async () => {
    // The pictures are finished before anything is compared.
    const made = async () =>
      (await server.owner.get<Answer<'houseChanges'>>(`/houses/${house.id}/changes`)).made;
    await expect.poll(made, { timeout: 20_000 }).toBe(2);
    const future = photos[1] ?? '';
    let tag = '';
    const body = (stage: string) => ({ id: crypto.randomUUID(), mark: 'い一', stage, region: REGION });
    const protection = crypto.randomUUID();
    const laid = { name: 'sill', what: 'sheet', hides: ['い一'], laidAt: '2026-04-01T00:00:00.000Z' };
    const acts: [kind: string, photo: string | null, act: () => Promise<unknown>][] = [
      [
        'tag.placed',
        photos[0] ?? '',
        async () =>
          (tag = (await server.owner.post<TagView>(`/photos/${photos[0]}/tags`, body('raised'))).id),
      ],
      [
        'tag.superseded',
        photos[0] ?? '',
        async () => (tag = (await server.owner.put<TagView>(`/tags/${tag}`, body('pegged'))).id),
      ],
      ['tag.withdrawn', photos[0] ?? '', () => server.owner.delete(`/tags/${tag}`)],
      [
        'note.written',
        null,
        () => server.owner.put(`/houses/${house.id}/days/2026-04-01/note`, { text: 'Rain.' }),
      ],
      [
        'photo.position-added',
        photos[0] ?? '',
        () => server.owner.put(`/photos/${photos[0]}/device-position`, DEVICE),
      ],
      ['photo.added', null, () => addPhoto(3)],
      [
        'photo.dated',
        future,
        () =>
          server.owner.put(`/photos/${future}/date`, {
            taken: '2026-04-01T03:00:00.000Z',
            withinS: 60,
            reason: 'diary',
          }),
      ],
      ['photo.dating-withdrawn', future, () => server.owner.delete(`/photos/${future}/date?reason=wrong`)],
      [
        'protection.laid',
        null,
        () => server.owner.post(`/houses/${house.id}/protections`, { id: protection, ...laid }),
      ],
      [
        'protection.changed',
        null,
        () => server.owner.put(`/protections/${protection}`, { ...laid, hides: ['い一', 'い二'] }),
      ],
      ['protection.lifted', null, () => server.owner.post(`/protections/${protection}/lift`, {})],
      [
        'protection.lifting-withdrawn',
        null,
        () => server.owner.delete(`/protections/${protection}/lift?reason=wrong`),
      ],
      ['protection.withdrawn', null, () => server.owner.delete(`/protections/${protection}?reason=wrong`)],
    ];
    for (const [kind, photo, act] of acts) {
      const before = await readAll();
      await act();
      const after = await readAll();
      const changed = Object.keys(after).filter((part) => after[part] !== before[part]);
      const touched = touchedBy({ type: 'statement', seq: 0, kind, photo }).map((t) =>
        // Of the report only what a photo touches is read: amended-report.test.ts.
        t.photo === null || t.part === 'report' ? t.part : `${t.part} ${t.photo}`,
      );
      expect(changed.length, kind).toBeGreaterThan(0);
      expect(
        changed.filter((part) => !touched.includes(part as HouseData)),
        kind,
      ).toEqual([]);
    }
  });
});
