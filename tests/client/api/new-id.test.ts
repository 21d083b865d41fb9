import { afterEach, expect, test, vi } from 'vitest';
import { z } from 'zod';
import { newId } from '../../../client/api/new-id.ts';

afterEach(() => vi.unstubAllGlobals());

// RFC 9562, 5.4: version 4 in the 13th digit, variant 10xx in the 17th.
test.each([true, false])('is a UUID of version 4 (secure context: %s)', (isSecure) => {
  const real = globalThis.crypto;
  const randomUUID = isSecure ? () => real.randomUUID() : undefined;
  vi.stubGlobal('crypto', {
    getRandomValues: (b: Uint8Array<ArrayBuffer>) => real.getRandomValues(b),
    randomUUID,
  });
  const ids = Array.from({ length: 200 }, newId);
  for (const id of ids) expect(z.uuidv4().safeParse(id).success, id).toBe(true);
  expect(new Set(ids).size).toBe(200);
});
