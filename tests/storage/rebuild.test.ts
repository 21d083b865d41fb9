import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { createHouse } from '../../server/services/houses.ts';
import { PROJECTION_VERSION, rebuildAll, rebuildIfOlder } from '../../server/storage/rebuild.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import {
  HARU,
  addPhoto,
  dumpFindings,
  dumpProjection,
  openRecord,
  temporaryFolder,
  type TestRecord,
} from '../support/record.ts';
import { anyAct, MEMBERS, play } from './random-history.ts';

describeOverBothDatabases('rebuild from the ledger', (make) => {
  let place: PlaceForDatabase;
  let record: TestRecord;
  beforeAll(async () => {
    place = await make();
    record = await openRecord(place.config);
  });
  afterAll(async () => {
    await record.close();
    await place.remove();
  });

  it('reproduces identical tables for random histories', async () => {
    let refusals = 0;
    // In the middle of the photos' days: some are dated later than they were added.
    record.at('2026-04-04T00:00:00.000Z');
    await fc.assert(
      fc.asyncProperty(fc.array(anyAct, { minLength: 1, maxLength: 40, size: 'max' }), async (acts) => {
        const house = randomUUID();
        const facts = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: null, site: null };
        await createHouse(record.context, HARU, house, facts);
        refusals += await play(record, house, [...MEMBERS, ...acts]);
      }),
      { numRuns: 50 },
    );
    // The histories must reach the refusals as well, or they test too little.
    expect(refusals).toBeGreaterThan(0);
    const before = await dumpProjection(record.database);
    const piecewise = await dumpFindings(record.database);
    for (const rows of Object.values(before)) expect(rows.length).toBeGreaterThan(0);
    const done = await rebuildAll(record.database.db);
    expect(done.length).toBeGreaterThan(20);
    expect(await dumpProjection(record.database)).toEqual(before);
    // The rebuild makes all findings anew; before it they had been made piece by piece.
    const anew = await dumpFindings(record.database);
    expect(anew).toEqual(piecewise);
    expect(new Set(anew.map(({ kind }) => kind)).size).toBeGreaterThan(4);
  }, 240_000);
});

it('a deleted embedded database is filled again from the ledger files', async () => {
  const { folder, remove } = await temporaryFolder();
  const config = { kind: 'embedded' as const, folder: path.join(folder, 'database') };
  const houses = path.join(folder, 'houses');
  try {
    const record = await openRecord(config, houses);
    const house = randomUUID();
    await createHouse(record.context, HARU, house, {
      name: '谷の舟小屋',
      zone: 'Asia/Tokyo',
      firstDay: null,
      site: null,
    });
    const acts = fc.sample(anyAct, { numRuns: 120, seed: 7 });
    await play(record, house, [...MEMBERS, ...acts]);
    const before = await dumpProjection(record.database);
    const state = await record.context.store.read.ledgerState(house);
    await record.close();
    await rm(config.folder, { recursive: true });

    const again = await openRecord(config, houses);
    expect(await dumpProjection(again.database)).toEqual(before);
    expect(await again.context.store.read.ledgerState(house)).toEqual(state);
    await again.close();
  } finally {
    await remove();
  }
}, 120_000);

describeOverBothDatabases('a database that an older program filled', (make) => {
  it('gets its tables anew at the start, once', async () => {
    const place = await make();
    const record = await openRecord(place.config);
    try {
      const house = randomUUID();
      const facts = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: '2026-04-01', site: null };
      await createHouse(record.context, HARU, house, facts);
      await addPhoto(record.context, house, 1, { wallTime: '2026-03-01T09:30:00' });
      const { db } = record.database;
      const readDoubt = () => db.selectFrom('photo').select('doubt').executeTakeFirst();
      expect(await readDoubt()).toEqual({ doubt: 'before-first-day' });
      // As the older program left it: a version behind, and without the column that came since.
      await db.updateTable('photo').set({ doubt: null }).execute();
      await db
        .updateTable('projectionVersion')
        .set({ version: PROJECTION_VERSION - 1 })
        .execute();
      expect(await rebuildIfOlder(db)).toBe(true);
      expect(await readDoubt()).toEqual({ doubt: 'before-first-day' });
      expect(await rebuildIfOlder(db)).toBe(false);
    } finally {
      await record.close();
      await place.remove();
    }
  });
});
