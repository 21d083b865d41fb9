import type { MemberView } from '#domain/contract/views';
import { gridReader } from '#domain/frame/grid-reader';
import { dayAfter } from '#domain/frame/invented/invented-house';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { indexMembers } from '../../client/finding/member-index.ts';
import type { Kept } from '../../server/demo/render/truth/truth-file.ts';
import { tagChooser, type Choice } from '../../server/demo/story/choose-tags.ts';
import { planOf } from '../../server/demo/story/house-plan.ts';
import { PHOTOS } from '../../server/demo/story/photos.ts';
import { truthOf } from './demo-truth.ts';

const RAISING = '2026-04-01';

/** The demo house, as the bench knows it. */
export function demoHouse() {
  const plan = planOf(RAISING);
  const members = plan.members.map(
    (member) => ({ ...member, name: '', place: '', retired: false }) as unknown as MemberView,
  );
  const space = { axis: (mark: string) => plan.axes.get(mark) ?? null, reader: gridReader(plan.grid) };
  return { plan, space, index: indexMembers(members, BUILT_IN) };
}

export interface TaggedPhoto {
  readonly name: string;
  readonly truth: Kept;
  readonly tags: readonly Choice[];
}

/** Its photos in the order in which they were taken, with what is tagged on them when the demo opens. */
export async function demoPhotos(): Promise<TaggedPhoto[]> {
  const choose = tagChooser(planOf(RAISING), new Set());
  const photos = await Promise.all(PHOTOS.map(async (photo) => ({ ...photo, truth: await truthOf(photo) })));
  return photos
    .toSorted((a, b) => a.day - b.day)
    .map(({ name, day, truth, isTagged }) => ({
      ...{ name, truth },
      tags: isTagged ? choose(truth, dayAfter(RAISING, day)) : [],
    }));
}
