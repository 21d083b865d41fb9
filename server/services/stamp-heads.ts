import type { StampsView } from '#domain/contract/stamps';
import type { Context } from './context.ts';
import { StampTrouble } from './stamps.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

/**
 * Has the tree head of a house stamped and says so in its ledger: what is stamped are the 32 bytes of the head.
 * Resolves to the trouble where there is no stamp, which stands beside the ledger until there is one; null where
 * there is a stamp or nothing to stamp. A stamp alone is no reason for another.
 */
export async function stampHead(context: Context, house: string): Promise<StampTrouble | null> {
  const { store, stampLog, timeStamps } = context;
  const found = timeStamps && (await store.read.unstampedHead(house));
  if (!found) return null;
  try {
    const { token, at, by } = await timeStamps.stamp(Buffer.from(found.head, 'hex'));
    await store.write(house, null, async (writing) => {
      // Another process may have been asked as well.
      if ((await writing.lastStamp(house))?.size === found.size) return;
      const payload = { ...found, token: Buffer.from(token).toString('base64'), at, by };
      await writing.say({ kind: 'head.stamped', version: 1, payload });
    });
    await stampLog.noteTrouble(house, null);
    return null;
  } catch (error) {
    if (!(error instanceof StampTrouble)) throw error;
    await stampLog.noteTrouble(house, error.reason);
    return error;
  }
}

/** Houses that have had no stamp for a day, and those that wanted one and got none. */
export function housesToStamp({ stampLog, now }: Context): Promise<string[]> {
  return stampLog.due(new Date(now().getTime() - DAY_MS));
}

export async function readStamps(
  { store, stampLog, timeStamps }: Context,
  house: string,
): Promise<StampsView> {
  return {
    isConfigured: timeStamps !== null,
    last: await store.read.lastStamp(house),
    trouble: await stampLog.trouble(house),
  };
}
