import { sha256 } from '@noble/hashes/sha2.js';
import type { Hashing } from '#domain/verify/hashing';

/** SHA-256 without the browser's own, which is there on https only and wants each file whole. */
export const nobleHashing: Hashing = {
  digest: (bytes) => sha256(bytes),
  begin: () => {
    const hash = sha256.create();
    return { add: (bytes) => void hash.update(bytes), digest: () => hash.digest() };
  },
};
