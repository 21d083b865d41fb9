import type { RefusalRequest } from '#domain/contract/hold';
import type { AccountView, CoveringView, HouseView, TagView } from '#domain/contract/views';
import { outrunBy } from '#domain/record/release';
import { speaker, type Context } from './context.ts';
import { readCoveringLines } from './covering-lines.ts';
import { readCoveringOf } from './coverings.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { sameContent } from './same-content.ts';
import { someMarks } from './some-marks.ts';

interface Place {
  readonly house: string;
  readonly covering: string;
}

/** Said again, nothing is said; what is released need not be inspected, unless its release is outrun: this ends it. */
export async function readyCovering(
  context: Context,
  account: AccountView,
  place: Place,
  note: string,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readOpen(writing, place.covering);
    if (before.hold.state === 'released' && !(await isOutrun(context, writing, before)))
      throw new Failure('already-released', { covering: before.name });
    if (before.hold.state === 'ready' && before.hold.said?.note === note) return before;
    await writing.say({ kind: 'covering.ready', version: 1, payload: { covering: place.covering, note } });
    return readCoveringOf(writing, place.covering);
  });
}

async function isOutrun(
  context: Context,
  writing: HouseWriting,
  { id, hold }: CoveringView,
): Promise<boolean> {
  const release = hold.release === null ? undefined : await writing.release(hold.release);
  if (!release) return false;
  const { lines } = await readCoveringLines(context, writing, { house: writing.houseId, covering: id });
  return outrunBy(release.facts.hides, lines).length > 0;
}

export async function withdrawReady(
  context: Context,
  account: AccountView,
  place: Place,
  reason: string,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readOpen(writing, place.covering);
    if (before.hold.state === 'planned') return before;
    if (before.hold.state !== 'ready') throw new Failure('not-ready', { covering: before.name });
    const payload = { covering: place.covering, reason };
    await writing.say({ kind: 'covering.ready-withdrawn', version: 1, payload });
    return readCoveringOf(writing, place.covering);
  });
}

/** An inspector's word that a covering may not close yet, with what is missing. */
export async function refuseCovering(
  context: Context,
  account: AccountView,
  place: Place,
  { lacking, note }: RefusalRequest,
): Promise<CoveringView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readOpen(writing, place.covering);
    const { state, said, lacking: known } = before.hold;
    if (state === 'refused' && said?.note === note && sameContent(known, lacking)) return before;
    if (state !== 'ready') throw new Failure('not-ready', { covering: before.name });
    assertHidden(before, lacking);
    const payload = { covering: place.covering, lacking, note };
    await writing.say({ kind: 'covering.refused', version: 1, payload });
    return readCoveringOf(writing, place.covering);
  });
}

export async function stateReleaseRule(
  context: Context,
  account: AccountView,
  house: string,
  rule: { fourEyes: boolean; reason: string },
): Promise<HouseView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const read = async () => {
      const view = await writing.house(house, account.id);
      if (!view) throw new Failure('not-found', { what: 'house' });
      return view;
    };
    const before = await read();
    if (before.fourEyes === rule.fourEyes) return before;
    await writing.say({ kind: 'release-rule.stated', version: 1, payload: rule });
    return read();
  });
}

/** A tag that somebody doubts counts no more until the doubt is answered, or another tag stands in its place. */
export async function disputeTag(
  context: Context,
  account: AccountView,
  house: string,
  tag: string,
  reason: string,
): Promise<TagView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const read = async () => {
      const view = await writing.tag(tag);
      if (!view) throw new Failure('not-found', { what: 'tag' });
      return view;
    };
    const before = await read();
    const { photo, mark, state, disputed } = before;
    if (state !== 'standing') throw new Failure('tag-not-standing', { mark });
    const isSame = disputed?.by?.id === account.id && disputed.reason === reason;
    if (isSame && !(await isAnswered(writing, tag))) return before;
    await writing.say({ kind: 'tag.disputed', version: 1, payload: { tag, photo, mark, reason } });
    return read();
  });
}

async function isAnswered(writing: HouseWriting, tag: string): Promise<boolean> {
  const [doubt] = await writing.findings(writing.houseId, { keys: [`disputed:${tag}`], limit: 1 });
  return doubt?.answer?.stands === true;
}

export async function readOpen(writing: HouseWriting, covering: string): Promise<CoveringView> {
  const view = await readCoveringOf(writing, covering);
  if (view.closed) throw new Failure('covering-closed', { covering: view.name });
  return view;
}

function assertHidden({ name, hides }: CoveringView, lacking: RefusalRequest['lacking']): void {
  const hidden = new Set<string>(hides.map(({ mark }) => mark));
  const unknown = lacking.filter(({ mark }) => !hidden.has(mark)).map(({ mark }) => mark);
  if (unknown.length > 0) throw new Failure('not-hidden', { covering: name, ...someMarks(unknown) });
}
