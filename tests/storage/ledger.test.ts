import { randomUUID } from 'node:crypto';
import { appendFile, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { canonicalJson } from '#domain/ledger/canonical-json';
import { EMPTY_FRONTIER, appendLeaf, leafHash, treeHead } from '#domain/ledger/merkle-tree';
import { createHouse } from '../../server/services/houses.ts';
import { writeNote } from '../../server/services/days.ts';
import { LedgerFile } from '../../server/storage/ledger-file.ts';
import { LedgerMismatch } from '../../server/storage/append-lines.ts';
import { sha256 } from '../../server/storage/sha256.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { AKI, HARU, openRecord, temporaryFolder, type TestRecord } from '../support/record.ts';

const FACTS = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: null, site: null };
const DAY = '2026-04-01';

describeOverBothDatabases('the ledger', (make) => {
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

  it('numbers entries without a gap when many people write at once, and chains their hashes', async () => {
    const house = randomUUID();
    await createHouse(record.context, HARU, house, FACTS);
    const writers = Array.from({ length: 40 }, (_, i) =>
      writeNote(record.context, i % 2 ? HARU : AKI, house, DAY, `Note ${i}`),
    );
    await Promise.all(writers);
    const entries = await record.context.store.read.entries(house, 0, 1000);
    expect(entries.map((entry) => entry.seq)).toEqual(Array.from({ length: 42 }, (_, i) => i));
    let frontier = EMPTY_FRONTIER;
    for (const { leaf, head, ...entry } of entries) {
      const text = canonicalJson({ house, ...entry });
      frontier = appendLeaf(sha256, frontier, leafHash(sha256, new TextEncoder().encode(text)));
      expect(leaf).toBe(Buffer.from(leafHash(sha256, new TextEncoder().encode(text))).toString('hex'));
      expect(head).toBe(Buffer.from(treeHead(sha256, frontier)).toString('hex'));
    }
    const state = await record.context.store.read.ledgerState(house);
    expect(state).toEqual({ size: 42, head: entries.at(-1)?.head });
  });

  it('keeps nothing of a write that fails half way', async () => {
    const house = randomUUID();
    await createHouse(record.context, HARU, house, FACTS);
    const broken = record.context.store.write(house, HARU, async (writing) => {
      await writing.say({ kind: 'note.written', version: 1, payload: { day: DAY, text: 'half' } });
      throw new Error('power');
    });
    await expect(broken).rejects.toThrow('power');
    expect(await record.context.store.read.ledgerState(house)).toMatchObject({ size: 2 });
    expect(await record.context.store.read.notes(house, DAY)).toEqual([]);
  });

  it('refuses an entry of an unknown version instead of guessing', async () => {
    const house = randomUUID();
    await createHouse(record.context, HARU, house, FACTS);
    const future = { kind: 'note.written', version: 2, payload: { day: DAY, text: 'x', mood: 'good' } };
    const write = record.context.store.write(house, HARU, (writing) => writing.say(future as never));
    await expect(write).rejects.toThrow(/note\.written version 2 is not known/);
  });
});

describe('the ledger file beside the embedded database', () => {
  it('holds every accepted entry, and a torn last line is cut off', async () => {
    const { folder, remove } = await temporaryFolder();
    const config = { kind: 'embedded' as const, folder: path.join(folder, 'database') };
    const houses = path.join(folder, 'houses');
    const house = randomUUID();
    const record = await openRecord(config, houses);
    await createHouse(record.context, HARU, house, FACTS);
    await Promise.all(
      [1, 2, 3, 4, 5].map((n) => writeNote(record.context, HARU, house, `2026-04-0${n}`, `${n}`)),
    );
    await record.close();
    const file = path.join(houses, house, 'ledger.jsonl');
    const whole = await readFile(file, 'utf8');
    const seqs = whole
      .trimEnd()
      .split('\n')
      .map((line) => (JSON.parse(line) as { entry: { seq: number } }).entry.seq);
    expect(seqs).toEqual([0, 1, 2, 3, 4, 5, 6]);

    await appendFile(file, '{"entry":{"at":"2026-');
    const again = await openRecord(config, houses);
    expect(await readFile(file, 'utf8')).toBe(whole);
    expect((await again.context.store.read.ledgerState(house)).size).toBe(7);
    await again.close();
    await remove();
  }, 60_000);

  it('gets what the database has and the file lacks, and the other way round', async () => {
    const { folder, remove } = await temporaryFolder();
    const config = { kind: 'embedded' as const, folder: path.join(folder, 'database') };
    const houses = path.join(folder, 'houses');
    const house = randomUUID();
    let record = await openRecord(config, houses);
    await createHouse(record.context, HARU, house, FACTS);
    await writeNote(record.context, HARU, house, DAY, 'one');
    await record.close();
    const file = path.join(houses, house, 'ledger.jsonl');
    const whole = await readFile(file, 'utf8');
    const lines = whole.split('\n');

    // A power cut between commit and file: the file is one entry behind.
    await writeFile(file, `${lines.slice(0, 2).join('\n')}\n`);
    record = await openRecord(config, houses);
    expect(await readFile(file, 'utf8')).toBe(whole);

    // A power cut that took the database's last commit: the database is one entry behind.
    const db = record.database.db;
    await db.deleteFrom('dayNote').execute();
    await db.deleteFrom('statementSubject').where('seq', '=', 2).execute();
    await db.deleteFrom('ledgerEntry').where('seq', '=', 2).execute();
    let frontier = EMPTY_FRONTIER;
    for (const line of lines.slice(0, 2)) {
      const { leaf } = JSON.parse(line) as { leaf: string };
      frontier = appendLeaf(sha256, frontier, Buffer.from(leaf, 'hex'));
    }
    const [peak] = frontier.peaks;
    await db
      .updateTable('ledger')
      .set({ size: 2, frontier: Buffer.from(peak as Uint8Array), head: Buffer.from(peak as Uint8Array) })
      .execute();
    await record.close();
    record = await openRecord(config, houses);
    expect((await record.context.store.read.notes(house, DAY)).map((note) => note.text)).toEqual(['one']);
    await record.close();
    await remove();
  }, 60_000);

  it('refuses to start where file and database tell different stories, and changes neither', async () => {
    const { folder, remove } = await temporaryFolder();
    const config = { kind: 'embedded' as const, folder: path.join(folder, 'database') };
    const houses = path.join(folder, 'houses');
    const house = randomUUID();
    const record = await openRecord(config, houses);
    await createHouse(record.context, HARU, house, FACTS);
    await writeNote(record.context, HARU, house, DAY, 'true');
    await record.close();
    const file = path.join(houses, house, 'ledger.jsonl');
    const altered = (await readFile(file, 'utf8')).replace(
      /"head":"[0-9a-f]{4}(?=[^\n]*\n$)/,
      '"head":"ffff',
    );
    await writeFile(file, altered);
    await expect(openRecord(config, houses)).rejects.toThrow(LedgerMismatch);
    expect(await readFile(file, 'utf8')).toBe(altered);
    await remove();
  }, 60_000);

  it('keeps the order of entries whatever the order of the writes, and fills a hole that a failed write left', async () => {
    const { folder, remove } = await temporaryFolder();
    await mkdir(folder, { recursive: true });
    const target = path.join(folder, 'x', 'ledger.jsonl');
    const { file } = await LedgerFile.open(target);
    const line = (seq: number) => ({
      house: 'h',
      seq,
      canonical: `{"seq":${seq}}`,
      leaf: new Uint8Array(32),
      head: new Uint8Array(32),
    });
    const asked: number[][] = [];
    const missing = (from: number, to: number) => {
      asked.push([from, to]);
      return Promise.resolve(Array.from({ length: to - from }, (_, i) => line(from + i)));
    };
    await Promise.all([
      file.reach(3, [line(2)], missing),
      file.reach(1, [line(0)], missing),
      file.reach(2, [line(1)], missing),
    ]);
    await file.reach(5, [], missing);
    await file.close();
    const seqs = (await readFile(target, 'utf8'))
      .trimEnd()
      .split('\n')
      .map((text) => (JSON.parse(text) as { entry: { seq: number } }).entry.seq);
    expect(seqs).toEqual([0, 1, 2, 3, 4]);
    expect(asked).toEqual([
      [0, 2],
      [3, 5],
    ]);
    await remove();
  });
});

it('a broken embedded database is refused with what to do, and comes back from the ledger file', async () => {
  const { folder, remove } = await temporaryFolder();
  const config = { kind: 'embedded' as const, folder: path.join(folder, 'database') };
  const houses = path.join(folder, 'houses');
  const house = randomUUID();
  const record = await openRecord(config, houses);
  await createHouse(record.context, HARU, house, FACTS);
  await record.close();
  await writeFile(path.join(config.folder, 'global', 'pg_control'), Buffer.alloc(8192, 7));
  await expect(openRecord(config, houses)).rejects.toThrow(/Move that folder away and start again/);
  await rename(config.folder, path.join(folder, 'broken'));
  const again = await openRecord(config, houses);
  expect((await again.context.store.read.house(house, HARU.id))?.name).toBe('Boathouse');
  await again.close();
  await remove();
}, 60_000);
