import { createHash, randomBytes } from 'node:crypto';
import type { Db } from '../open-database.ts';

/** 256 random bits for an address or a header; only its hash is stored. */
export function newSecret(prefix = ''): string {
  return prefix + randomBytes(32).toString('base64url');
}

export function hashSecret(secret: string): Buffer {
  return createHash('sha256').update(secret).digest();
}

/** A secret of the whole instance, made at its first use and shared by all its processes. */
export async function instanceSecret(db: Db, name: string): Promise<string> {
  await db
    .insertInto('instanceSecret')
    .values({ name, value: newSecret() })
    .onConflict((c) => c.doNothing())
    .execute();
  return (
    await db.selectFrom('instanceSecret').select('value').where('name', '=', name).executeTakeFirstOrThrow()
  ).value;
}
