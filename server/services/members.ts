import type { Mark } from '#domain/frame/mark';
import { compareMarkKeys, markKey } from '#domain/frame/mark-order';
import type { MemberFacts } from '#domain/contract/shapes';
import type { AccountView, MemberHistoryView, MemberView } from '#domain/contract/views';
import { doubtOf } from '#domain/photo/capture-doubt';
import { clockOf } from '#domain/record/certain-order';
import { stageIntervals, type StageSighting } from '#domain/record/member-history';
import { speaker, type Context } from './context.ts';
import { coveringsOver } from './coverings-over.ts';
import { cropAddress } from './crop-address.ts';
import { Failure } from './failure.ts';
import { readSaidOfMember } from './said-of-member.ts';
import type { HouseWriting, RecordReader, Sighting } from './record-store.ts';
import { sameContent } from './same-content.ts';

export async function putMember(
  context: Context,
  account: AccountView,
  house: string,
  facts: MemberFacts,
): Promise<MemberView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await writing.member(house, facts.mark);
    const unchanged = before && !before.retired && sameContent(factsOf(before), facts);
    if (!unchanged) await writing.say({ kind: 'member.entered', version: 2, payload: facts });
    return required(writing, house, facts.mark);
  });
}

/** In the order in which a carpenter counts them: iroha, then numbers by value. */
export async function listMembers(context: Context, house: string): Promise<MemberView[]> {
  const members = await context.store.read.members(house);
  const keyed = members.map((member) => ({ member, key: markKey(member.mark) }));
  return keyed.sort((a, b) => compareMarkKeys(a.key, b.key)).map(({ member }) => member);
}

/** A member that a tag or a covering names is retired and keeps its history; one that nothing names is removed. */
export async function deleteMember(
  context: Context,
  account: AccountView,
  house: string,
  mark: Mark,
): Promise<'retired' | 'removed'> {
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await required(writing, house, mark);
    if (before.retired) return 'retired';
    const outcome = (await writing.isReferredTo(house, mark)) ? 'retired' : 'removed';
    await writing.say({ kind: `member.${outcome}`, version: 1, payload: { mark } });
    return outcome;
  });
}

/** All that is known of one member. Its coverings say only what they ask of this member. */
export async function readMemberHistory(
  context: Context,
  house: string,
  mark: Mark,
): Promise<MemberHistoryView> {
  const { read } = context.store;
  const member = await required(read, house, mark);
  const sightings = await read.sightings(house, mark);
  return {
    member,
    stages: stageIntervals(
      member.track,
      sightings.filter(({ tag }) => tag.state === 'standing').map(toStageSighting),
    ),
    sightings: sightings.map(({ tag, fileName, capture }) => ({
      ...{ tag, fileName, capture },
      crop: cropAddress(tag.id),
    })),
    coverings: await coveringsOver(read, house, member),
    protections: (await read.protections(house, mark)).flatMap(({ hides, ...protection }) => {
      const { id, name, what, laidAt, lifted } = protection;
      const over = hides.find((h) => h.mark === mark);
      return over ? [{ id, name, what, laidAt, lifted, stretch: over.stretch }] : [];
    }),
    statements: await readSaidOfMember(read, house, mark),
  };
}

function toStageSighting({ tag: { id, photo, stage }, capture, camera }: Sighting): StageSighting {
  const clock = clockOf(camera, capture);
  const instant = capture.state === 'dated' && doubtOf(capture) === null ? capture.instant : null;
  const uncertaintyS = capture.state === 'dated' ? capture.uncertaintyS : 0;
  return { tag: id, photo, stage, instant, uncertaintyS, clock };
}

async function required(read: RecordReader | HouseWriting, house: string, mark: string): Promise<MemberView> {
  const member = await read.member(house, mark);
  if (!member) throw new Failure('not-found', { what: 'member', mark });
  return member;
}

function factsOf({ mark, kind, name, place, statedTrack, note, other, setOut }: MemberView): MemberFacts {
  return { mark, kind, name, place, track: statedTrack, note, other, setOut };
}
