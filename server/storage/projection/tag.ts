import type { Entry } from '#domain/ledger/statements';
import type { TagFacts } from '#domain/contract/shapes';
import type { Tx } from '../tx.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectTag: Projector<'tag.placed' | 'tag.superseded' | 'tag.withdrawn' | 'tag.disputed'> = {
  'tag.placed': (tx, entry) => insert(tx, entry, entry.payload, null),

  'tag.superseded': async (tx, entry) => {
    await end(tx, entry, entry.payload.supersedes, 'superseded', '');
    await insert(tx, entry, entry.payload, entry.payload.supersedes);
  },

  'tag.withdrawn': (tx, entry) => end(tx, entry, entry.payload.tag, 'withdrawn', entry.payload.reason),

  'tag.disputed': async (tx, { at, by, payload: { tag, reason } }) => {
    const doubt = { disputedAt: at, disputedBy: jsonOrNull(by), disputeReason: reason };
    await tx.updateTable('tag').set(doubt).where('id', '=', tag).execute();
  },
};

async function insert(
  tx: Tx,
  { house, at, by }: Entry,
  { tag, photo, mark, stage, region, stretch, note }: TagFacts & { tag: string; photo: string },
  supersedes: string | null,
): Promise<void> {
  const said = { saidAt: at, saidBy: jsonOrNull(by), state: 'standing' as const };
  await tx
    .insertInto('tag')
    .values({
      id: tag,
      houseId: house,
      photoId: photo,
      mark,
      stage,
      note,
      supersedes,
      ...said,
      region: JSON.stringify(region),
      stretch: jsonOrNull(stretch),
    })
    .execute();
}

/** Only a standing tag ends: of two people who supersede the same tag both statements stand, and the first ended it. */
async function end(
  tx: Tx,
  { at, by }: Entry,
  tag: string,
  state: 'superseded' | 'withdrawn',
  reason: string,
): Promise<void> {
  await tx
    .updateTable('tag')
    .set({ state, endedAt: at, endedBy: jsonOrNull(by), endReason: reason })
    .where('id', '=', tag)
    .where('state', '=', 'standing')
    .execute();
}
