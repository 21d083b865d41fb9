import { createHash } from 'node:crypto';
import type { Hashing } from '#domain/verify/hashing';

/** OpenSSL's SHA-256, by Node.js. */
export const hashing: Hashing = {
  digest: (bytes) => createHash('sha256').update(bytes).digest(),
  begin: () => {
    const hash = createHash('sha256');
    return { add: (bytes) => void hash.update(bytes), digest: () => hash.digest() };
  },
};
