import type { CoveringFacts } from '#domain/contract/shapes';
import type { AccountView, CoveringView } from '#domain/contract/views';
import { isInTrack } from '#domain/frame/stage';
import { assertListed, assertZone } from './assert-listed.ts';
import { CLOCK_SLACK_MS } from './assert-past.ts';
import { closesUnder } from './closes-under.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { assertRepeated, sameContent } from './same-content.ts';

export async function planCovering(
  context: Context,
  account: AccountView,
  place: { house: string; covering: string },
  facts: CoveringFacts,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await writing.covering(place.covering);
    if (before) {
      assertRepeated(place.covering, factsOf(before), facts);
      return before;
    }
    await assertCanHide(writing, facts);
    const payload = { ...facts, covering: place.covering };
    await writing.say({ kind: 'covering.planned', version: 2, payload });
    return readCoveringOf(writing, place.covering);
  });
}

export async function changeCovering(
  context: Context,
  account: AccountView,
  place: { house: string; covering: string },
  facts: CoveringFacts,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readCoveringOf(writing, place.covering);
    if (sameContent(factsOf(before), facts)) return before;
    if (before.closed) throw new Failure('covering-closed', { covering: before.name });
    await assertCanHide(writing, facts);
    const payload = { ...facts, covering: place.covering };
    await writing.say({ kind: 'covering.changed', version: 2, payload });
    return readCoveringOf(writing, place.covering);
  });
}

/** Nothing closes quietly: under a release that stands for all that it hides, or with the reason why not. */
export async function closeCovering(
  context: Context,
  account: AccountView,
  place: { house: string; covering: string },
  said: { closedAt: string | null; note: string; withoutRelease: string | null },
): Promise<CoveringView> {
  const { closedAt, note, withoutRelease } = said;
  if (closedAt !== null && Date.parse(closedAt) > context.now().getTime() + CLOCK_SLACK_MS)
    throw new Failure('closing-in-the-future', { closedAt });
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readCoveringOf(writing, place.covering);
    if (before.closed && (closedAt === null || closedAt === before.closed.at)) return before;
    if (before.closed) throw new Failure('covering-closed', { covering: before.name });
    // Not before the lock is held: a release that came first must not seem to be later than this.
    const at = closedAt ?? context.now().toISOString();
    const under = await closesUnder(context, writing, before, at, withoutRelease);
    const payload = { covering: place.covering, closedAt: at, note, ...under };
    await writing.say({ kind: 'covering.closed', version: 2, payload });
    return readCoveringOf(writing, place.covering);
  });
}

export async function reopenCovering(
  context: Context,
  account: AccountView,
  place: { house: string; covering: string },
  reason: string,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readCoveringOf(writing, place.covering);
    if (!before.closed) throw new Failure('covering-not-closed', { covering: before.name });
    const payload = { covering: place.covering, reason };
    await writing.say({ kind: 'covering.reopened', version: 1, payload });
    return readCoveringOf(writing, place.covering);
  });
}

export async function readCoveringOf(writing: HouseWriting, id: string): Promise<CoveringView> {
  const covering = await writing.covering(id);
  if (!covering) throw new Failure('not-found', { what: 'covering' });
  return covering;
}

/** A covering names members of the schedule, each once, and asks of each a stage that it passes and that shows it. */
async function assertCanHide(
  writing: HouseWriting,
  { hides, except, kind, zone }: CoveringFacts,
): Promise<void> {
  await assertZone(writing, zone);
  const members = await assertListed(writing, { hides: hides.map(({ mark }) => mark), except });
  for (const { mark, least } of hides) {
    const member = members.get(mark);
    const shown = member && isInTrack(least, member.track) && !(kind === 'plaster' && least === 'plastered');
    if (!shown) throw new Failure('stage-outside-track', { mark, stage: least });
  }
}

function factsOf({ name, kind, plannedDay, zone, hides, except, note }: CoveringView): CoveringFacts {
  const listed = hides.filter(({ byZone }) => !byZone).map(({ mark, least }) => ({ mark, least }));
  return { name, kind, plannedDay, zone, hides: listed, except, note };
}
