import type { TagFacts } from '#domain/contract/shapes';
import type { AccountView, TagView } from '#domain/contract/views';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { assertRepeated } from './same-content.ts';

/** States what a region of a photo shows. The mark need not be in the schedule yet. */
export async function placeTag(
  context: Context,
  account: AccountView,
  place: { house: string; photo: string; tag: string },
  facts: TagFacts,
): Promise<TagView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await writing.tag(place.tag);
    if (before) return repeated(before, { photo: place.photo, supersedes: null, ...facts });
    const payload = { ...facts, tag: place.tag, photo: place.photo };
    await writing.say({ kind: 'tag.placed', version: 2, payload });
    await writing.requestLegibility(place.photo);
    return read(writing, place.tag);
  });
}

/**
 * Replaces a tag by a new one. When two people replace the same tag, both new ones stand: two
 * statements, for a person to look at, and nothing that was said is lost.
 */
export async function supersedeTag(
  context: Context,
  account: AccountView,
  place: { house: string; supersedes: string; tag: string },
  facts: TagFacts,
): Promise<TagView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const old = await read(writing, place.supersedes);
    const before = await writing.tag(place.tag);
    if (before) return repeated(before, { photo: old.photo, supersedes: old.id, ...facts });
    if (old.state === 'withdrawn') throw new Failure('tag-withdrawn', { mark: old.mark });
    const payload = { ...facts, tag: place.tag, photo: old.photo, supersedes: old.id, was: old.mark };
    await writing.say({ kind: 'tag.superseded', version: 2, payload });
    await writing.requestLegibility(old.photo);
    return read(writing, place.tag);
  });
}

export async function withdrawTag(
  context: Context,
  account: AccountView,
  place: { house: string; tag: string },
  reason: string,
): Promise<TagView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const old = await read(writing, place.tag);
    if (old.state === 'withdrawn') return old;
    if (old.state === 'superseded') throw new Failure('tag-superseded', { mark: old.mark });
    const payload = { tag: old.id, photo: old.photo, mark: old.mark, reason };
    await writing.say({ kind: 'tag.withdrawn', version: 1, payload });
    return read(writing, place.tag);
  });
}

async function read(writing: HouseWriting, id: string): Promise<TagView> {
  const tag = await writing.tag(id);
  if (!tag) throw new Failure('not-found', { what: 'tag' });
  return tag;
}

function repeated(before: TagView, now: TagFacts & { photo: string; supersedes: string | null }): TagView {
  const { photo, supersedes, mark, stage, region, stretch, note } = before;
  assertRepeated(before.id, { photo, supersedes, mark, stage, region, stretch, note }, now);
  return before;
}
