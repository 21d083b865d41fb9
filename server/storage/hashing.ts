import { createHash } from 'node:crypto';
import type { Hashing } from '#domain/verify/hashing';
import { sha256 } from './sha256.ts';

/** SHA-256 by Node.js, for the verifier. */
export const hashing: Hashing = {
  digest: sha256,
  begin: () => {
    const hash = createHash('sha256');
    return { add: (bytes) => void hash.update(bytes), digest: () => hash.digest() };
  },
};
