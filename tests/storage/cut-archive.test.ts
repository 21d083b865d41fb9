import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openZipBlob } from '../../client/check/zip-blob.ts';
import { openZip } from '../../server/storage/archive/zip-archive.ts';
import { temporaryFolder } from '../support/record.ts';

/** Written by another program than ours. */
const ZIP = zipSync(
  { 'manifest.json': strToU8('{}'), 'ledger.jsonl': strToU8('x'.repeat(500)) },
  { level: 0 },
);

describe('a ZIP that was cut off', () => {
  let folder: string;
  let remove: () => Promise<void>;
  beforeAll(async () => {
    ({ folder, remove } = await temporaryFolder());
  });
  afterAll(() => remove());

  const readers = {
    command: async (bytes: Uint8Array) => {
      const file = path.join(folder, 'cut.zip');
      await writeFile(file, bytes);
      const archive = await openZip(file);
      await archive.close();
      return archive.files.length;
    },
    page: async (bytes: Uint8Array) => (await openZipBlob(new Blob([Uint8Array.from(bytes)]))).files.length,
  };

  it.each(['command', 'page'] as const)(
    'is told with its length, by the reader of the %s',
    async (reader) => {
      const read = readers[reader];
      expect(await read(ZIP)).toBe(2);
      for (const left of [ZIP.length - 1, ZIP.length - 22, 300, 21, 1])
        await expect(read(ZIP.subarray(0, left)), `${left} bytes`).rejects.toMatchObject({
          code: 'zip-end',
          message:
            `This file has ${left} bytes, and its end with the list of its files is missing: ` +
            'it was cut off, or it is no ZIP.',
        });
      await expect(read(new Uint8Array())).rejects.toThrow(/^This file is empty: it has 0 bytes\.$/);
    },
  );
});
