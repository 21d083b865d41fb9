import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sql } from 'kysely';
import { bitsOfHash } from '#domain/photo/alike';
import { createHouse } from '../../server/services/houses.ts';
import { nearlySamePairs } from '../../server/storage/queries/alike.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { addPhoto, HARU, openRecord, type TestRecord } from '../support/record.ts';

const PHOTOS = 60;
const BASE = 0xe0f8fef6f2ecfcf4n;

describeOverBothDatabases('photos that are nearly the same', (make) => {
  let place: PlaceForDatabase;
  let record: TestRecord;
  const house = randomUUID();
  const photos: string[] = [];
  beforeAll(async () => {
    place = await make();
    record = await openRecord(place.config);
    const facts = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: null, site: null };
    const other = randomUUID();
    await createHouse(record.context, HARU, house, facts);
    await createHouse(record.context, HARU, other, facts);
    for (let i = 0; i < PHOTOS; i++) photos.push(await addPhoto(record.context, house, i));
    // One of another house must never be told.
    const strange = await addPhoto(record.context, other, 0);
    for (const [i, photo] of [...photos, strange].entries()) {
      // Gray code of three wide steps: neighbours differ in 3 bits, further ones in more; a few hold nothing.
      const gray = BigInt(i ^ (i >> 1));
      const hash = (BASE ^ (gray * 0x10010000001n)) & 0xffffffffffffffffn;
      const bits = i % 20 === 19 ? '0'.repeat(64) : bitsOfHash(hash.toString(16));
      await sql`insert into picture (photo_id, state, hash, sharpness)
        values (${photo}, 'ready', ${bits}::bit(64), 1)
        on conflict (photo_id) do update set hash = excluded.hash`.execute(record.database.db);
    }
  });
  afterAll(async () => {
    await record.close();
    await place.remove();
  });

  it('are the same asked for one by one, a few at once, or all', async () => {
    const ask = async (which: string[] | null) =>
      (await nearlySamePairs(record.database.db, house, which)).map(
        ({ a, b, distance }) => `${a} ${b} ${distance}`,
      );
    const all = await ask(null);
    expect(all.length).toBeGreaterThan(PHOTOS);
    expect(all.length).toBeLessThan((PHOTOS * (PHOTOS - 1)) / 2);
    const oneByOne: string[] = [];
    for (const photo of photos) oneByOne.push(...(await ask([photo])));
    expect([...new Set(oneByOne)].toSorted()).toEqual(all.toSorted());
    const few = photos.slice(0, 20);
    const many = photos.slice(0, 40);
    const about = (some: string[]) => all.filter((pair) => some.some((photo) => pair.includes(photo)));
    expect((await ask(few)).toSorted()).toEqual(about(few).toSorted());
    expect((await ask(many)).toSorted()).toEqual(about(many).toSorted());
  });
});
