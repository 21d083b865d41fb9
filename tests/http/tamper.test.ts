import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verifyArchive } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
import { hashing } from '../../server/storage/hashing.ts';
import { inMemory, type Files } from '../support/hand-made-archive.ts';
import { readFiles } from '../support/read-archive.ts';
import { temporaryFolder } from '../support/record.ts';
import { smallestHouse } from '../support/sample-house.ts';
import { seeded } from '../support/seeded.ts';
import { startServer } from '../support/server.ts';

/** An archive as the server hands it out; what it is made of does not depend on the database. */
async function exportSample(): Promise<Files> {
  const { folder, remove } = await temporaryFolder();
  const server = await startServer({
    config: { kind: 'embedded', folder: path.join(folder, 'database') },
    remove,
  });
  try {
    const { id } = await smallestHouse(server.owner);
    const response = await server.owner.raw('GET', `/houses/${id}/archive`);
    const file = path.join(folder, 'house.zip');
    await writeFile(file, Buffer.from(await response.arrayBuffer()));
    return await readFiles(file);
  } finally {
    await server.close();
    await remove();
  }
}

async function wrongOf(files: Files): Promise<Wrong | null> {
  try {
    await verifyArchive(inMemory(files), hashing);
    return null;
  } catch (error) {
    if (error instanceof Wrong) return error;
    throw error;
  }
}

/** On which line, counted from 1, a byte lies; a line feed belongs to the line that it ends. */
const lineAt = (bytes: Uint8Array, at: number) =>
  bytes.subarray(0, at).filter((byte) => byte === 0x0a).length + 1;

describe('an archive of which one byte was changed', () => {
  let files: Files;
  beforeAll(async () => {
    files = await exportSample();
  });
  afterAll(() => files.clear());

  const random = seeded(11);
  /** The byte with one bit flipped, and another byte in its place. */
  const changes = (byte: number) => [
    byte ^ (1 << Math.floor(random() * 8)),
    (byte + 1 + Math.floor(random() * 255)) % 256,
  ];

  async function assertLocated(name: string, step: number, isLine: boolean): Promise<number> {
    const bytes = files.get(name) ?? new Uint8Array();
    let tried = 0;
    for (let at = 0; at < bytes.length; at += step)
      for (const byte of changes(bytes[at] ?? 0)) {
        const wrong = await wrongOf(new Map(files).set(name, bytes.with(at, byte)));
        const place = wrong && [wrong.place.file, ...(isLine ? [wrong.place.line] : [])];
        const wanted = [name, ...(isLine ? [lineAt(bytes, at)] : [])];
        if (String(place) !== String(wanted))
          expect.fail(`byte ${at} of ${name} as ${byte}: ${wrong?.message ?? 'nothing found'}`);
        tried += 1;
      }
    return tried;
  }

  it('is right before that', async () => {
    expect(await wrongOf(files)).toBeNull();
  });

  it('is found out at the line of the ledger, whichever byte it is', async () => {
    expect(await assertLocated('ledger.jsonl', 1, true)).toBeGreaterThan(4000);
  });

  it('is found out in the manifest, in each table, each page and each original', async () => {
    const others = [...files.keys()].filter((name) => name !== 'ledger.jsonl');
    expect(others.filter((name) => name.startsWith('tables/')).length).toBe(5);
    // Of the pages, which are no evidence but for reading, some bytes; of the tables every third.
    const isLongTable = (name: string) => /^tables/u.test(name) && (files.get(name)?.length ?? 0) > 100;
    const stepOf = (name: string) =>
      name === 'check.html' ? 49_999 : name === 'index.html' ? 97 : isLongTable(name) ? 3 : 1;
    for (const name of others) expect(await assertLocated(name, stepOf(name), false)).toBeGreaterThan(2);
  });

  it('or of which an end was cut off, at any length of the ledger and the original', async () => {
    for (const name of [...files.keys()].filter((one) => /^(ledger|originals)/u.test(one))) {
      const bytes = files.get(name) ?? new Uint8Array();
      for (let length = 0; length < bytes.length; length += 7)
        expect(await wrongOf(new Map(files).set(name, bytes.subarray(0, length)))).not.toBeNull();
    }
  });
});
