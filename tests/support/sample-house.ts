import { randomUUID } from 'node:crypto';
import type { ReviewView } from '#domain/contract/review-views';
import type { HouseView, TagView, UploadOutcome } from '#domain/contract/views';
import { makeJpeg, takenAt } from './pictures.ts';
import { newHouse, type Client } from './server.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };

/** The least of a house that has a record: one member, photo, tag and covering. */
export async function smallestHouse(owner: Client): Promise<HouseView> {
  const house = await newHouse(owner, '舟小屋');
  await owner.put(`/houses/${house.id}/members/${encodeURIComponent('い一')}`, { kind: '柱' });
  const bytes = await makeJpeg(8000, takenAt('2026-04-01T09:30:00'), { width: 8, height: 8 });
  const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [{ name: 'a.jpg', bytes }]);
  const [photo] = results.flatMap((one) => (one.outcome === 'refused' ? [] : [one.photo.id]));
  const tag = { id: randomUUID(), mark: 'い一', stage: 'raised', region: REGION };
  await owner.post(`/photos/${photo}/tags`, tag);
  await owner.post(`/houses/${house.id}/coverings`, {
    ...{ id: randomUUID(), name: '北の壁', kind: 'plaster', hides: [{ mark: 'い一', least: 'pegged' }] },
  });
  return house;
}

/** A small house with all that goes into an archive, said over HTTP: members, photos, tags, coverings. */
export async function sampleHouse(owner: Client, photos = 2): Promise<HouseView> {
  const house = await newHouse(owner, '谷の Boathouse');
  for (const mark of ['い一', 'い二', 'ろ<一>'])
    await owner.put(`/houses/${house.id}/members/${encodeURIComponent(mark)}`, { kind: '柱', place: '一階' });
  const files = await Promise.all(
    Array.from({ length: photos }, async (_, i) => ({
      name: `梁 ${i} & <b>.jpg`,
      bytes: await makeJpeg(9000 + i, takenAt(`2026-04-0${(i % 8) + 1}T09:30:00`), { width: 32, height: 24 }),
    })),
  );
  const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, files);
  const [first] = results.flatMap((one) => (one.outcome === 'refused' ? [] : [one.photo.id]));
  const place = (mark: string) => {
    const facts = { id: randomUUID(), mark, stage: 'raised', region: REGION, stretch: null, note: '' };
    return owner.post<TagView>(`/photos/${first}/tags`, facts);
  };
  const [one, two] = [await place('い一'), await place('い二')];
  await owner.put(`/tags/${one.id}`, {
    ...{ id: randomUUID(), mark: 'ろ<一>', stage: 'pegged', region: REGION, note: '"栓"' },
  });
  await owner.delete(`/tags/${two.id}?reason=${encodeURIComponent('見間違い')}`);
  const covering = randomUUID();
  await owner.post(`/houses/${house.id}/coverings`, {
    ...{ id: covering, name: '北の壁 <1>', kind: 'plaster', plannedDay: '2026-04-20', note: '' },
    hides: [{ mark: 'い一', least: 'pegged' }],
  });
  await owner.post(`/coverings/${covering}/close`, {
    ...{ closedAt: '2026-04-21T01:00:00.000Z', note: '', withoutRelease: '雨が近い' },
  });
  await releaseAnother(owner, house.id);
  await owner.put(`/houses/${house.id}/days/2026-04-02/note`, { text: '雨' });
  return house;
}

/** A second covering, over a member with a record and one without, released by whoever recorded it alone. */
async function releaseAnother(owner: Client, house: string): Promise<void> {
  const covering = randomUUID();
  await owner.put(`/houses/${house}/release-rule`, { fourEyes: false, reason: '一人の現場' });
  await owner.post(`/houses/${house}/coverings`, {
    ...{ id: covering, name: '南の壁', kind: 'plaster', plannedDay: '2099-05-20', note: '' },
    hides: ['い二', 'ろ<一>'].map((mark) => ({ mark, least: 'raised' })),
  });
  await owner.post(`/coverings/${covering}/ready`, {});
  const { lines } = await owner.get<ReviewView>(`/coverings/${covering}/review`);
  const members = lines.map(({ mark, basis, state }) => ({
    ...{ mark, basis, waived: state === 'on-record' ? null : '貫が見えない <面>' },
  }));
  await owner.post(`/coverings/${covering}/releases`, { id: randomUUID(), members });
}
