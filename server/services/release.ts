import type { ReleasedMember, ReleaseFacts, ReleaseRequest, Reviewed } from '#domain/contract/hold';
import type { ReleasedMemberView, ReleaseView, ReviewLineView } from '#domain/contract/review-views';
import type { AccountView } from '#domain/contract/views';
import { nameStretch } from '#domain/frame/name-stretch';
import type { Mark } from '#domain/frame/mark';
import { changesSince, linesToRelease, needsWaiver, outrunBy, releasedMember } from '#domain/record/release';
import { without, type Stretch } from '#domain/record/stretches';
import { speaker, type Context } from './context.ts';
import { readCoveringLines } from './covering-lines.ts';
import { doubtsSince } from './doubts-since.ts';
import { Failure } from './failure.ts';
import { readOpen } from './holds.ts';
import type { KeptRelease, RecordReader, ReleaseGround, Sighting } from './record-store.ts';
import { refusalsBefore } from './refusals-before.ts';
import { reviewable, toEvidence } from './review.ts';
import { sameContent } from './same-content.ts';
import { someMarks } from './some-marks.ts';

interface Place {
  readonly house: string;
  readonly covering: string;
}

/**
 * Releases a covering: every member that it hides was looked at as it stands now, what has no record is
 * waived by name and reason, and, unless the house does without, somebody else than the releasing person
 * recorded each and said that it is ready. It names the tree head that all of this lies under.
 */
export async function releaseCovering(
  context: Context,
  account: AccountView,
  place: Place,
  { id, members, note }: ReleaseRequest,
): Promise<ReleaseView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await writing.release(id);
    if (before) {
      assertSaidBefore(before, account, place.covering, { id, members, note });
      return viewOf(context, writing, before);
    }
    const covering = await readOpen(writing, place.covering);
    const { name, hold } = covering;
    if (hold.state === 'released') throw new Failure('already-released', { covering: name });
    if (hold.state !== 'ready') throw new Failure('not-ready', { covering: name });
    const { fourEyes = true } = (await writing.house(place.house, account.id)) ?? {};
    const review = await reviewable(context, writing, place, account.id);
    const lines = linesToRelease(review.lines);
    const waived = assertReviewed(name, lines, members);
    if (fourEyes && hold.said?.by?.id === account.id)
      throw new Failure('ready-by-oneself', { covering: name });
    if (fourEyes) assertOthersRecorded(name, lines);
    const { size, head: hash } = await writing.ledgerState(place.house);
    const hides = lines.map(releasedMember);
    const facts = {
      release: id,
      covering: place.covering,
      head: { size, hash },
      fourEyes,
      hides,
      waived,
      note,
    };
    await writing.say({ kind: 'covering.released', version: 1, payload: facts });
    await writing.requestStamp();
    return readReleaseIn(context, writing, id);
  });
}

export async function withdrawRelease(
  context: Context,
  account: AccountView,
  { house, release }: { house: string; release: string },
  reason: string,
): Promise<ReleaseView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await readKept(writing, release);
    if (before.withdrawn?.reason === reason) return viewOf(context, writing, before);
    if (before.withdrawn) throw new Failure('release-withdrawn');
    const payload = { release, covering: before.facts.covering, reason };
    await writing.say({ kind: 'release.withdrawn', version: 1, payload });
    return readReleaseIn(context, writing, release);
  });
}

export function readRelease(context: Context, release: string): Promise<ReleaseView> {
  return readReleaseIn(context, context.store.read, release);
}

async function readReleaseIn(context: Context, read: RecordReader, release: string): Promise<ReleaseView> {
  return viewOf(context, read, await readKept(read, release));
}

async function readKept(read: RecordReader, release: string): Promise<KeptRelease> {
  const kept = await read.release(release);
  if (!kept) throw new Failure('not-found', { what: 'release' });
  return kept;
}

/** What somebody says of each line must be about what it says now; resolves to the waivers. */
function assertReviewed(
  covering: string,
  lines: readonly ReviewLineView[],
  members: readonly Reviewed[],
): ReleaseFacts['waived'] {
  const said = new Map<string, Reviewed>(members.map((member) => [member.mark, member]));
  const hidden = new Set<string>(lines.map(({ mark }) => mark));
  refuse(
    'not-hidden',
    covering,
    members.filter(({ mark }) => !hidden.has(mark)),
  );
  refuse(
    'not-reviewed',
    covering,
    lines.filter(({ mark }) => !said.has(mark)),
  );
  refuse(
    'evidence-changed',
    covering,
    lines.filter(({ mark, basis }) => said.get(mark)?.basis !== basis),
  );
  const lacking = lines.filter(needsWaiver);
  refuse(
    'not-waived',
    covering,
    lacking.filter(({ mark }) => said.get(mark)?.waived === null),
  );
  return lacking.map(({ mark }) => ({ mark, reason: said.get(mark)?.waived ?? '' }));
}

function assertOthersRecorded(covering: string, lines: readonly ReviewLineView[]): void {
  refuse(
    'four-eyes',
    covering,
    lines.filter(({ own }) => own),
  );
}

function refuse(
  code: 'not-hidden' | 'not-reviewed' | 'evidence-changed' | 'not-waived' | 'four-eyes',
  covering: string,
  found: readonly { mark: string }[],
): void {
  if (found.length > 0) throw new Failure(code, { covering, ...someMarks(found.map(({ mark }) => mark)) });
}

/** The same request again, whatever has been said since. */
function assertSaidBefore(
  { facts, by }: KeptRelease,
  account: AccountView,
  covering: string,
  { id, members, note }: ReleaseRequest,
): void {
  const waived = members.flatMap(({ mark, waived: reason }) => (reason === null ? [] : [{ mark, reason }]));
  const lacking = new Set(facts.waived.map(({ mark }) => mark));
  const isSame =
    by?.id === account.id &&
    facts.covering === covering &&
    facts.note === note &&
    sameContent(facts.hides.map(({ mark }) => mark).toSorted(), members.map(({ mark }) => mark).toSorted()) &&
    sameContent(byMark(facts.waived), byMark(waived.filter(({ mark }) => lacking.has(mark))));
  if (!isSame) throw new Failure('id-used-for-something-else', { id });
}

function byMark<T extends { mark: string }>(marked: readonly T[]): T[] {
  return marked.toSorted((a, b) => (a.mark < b.mark ? -1 : 1));
}

async function viewOf(context: Context, read: RecordReader, kept: KeptRelease): Promise<ReleaseView> {
  const { facts, house } = kept;
  const { release: id, covering, ...said } = facts;
  const { lines, members } = await readCoveringLines(context, read, { house: house.id, covering });
  const since = changesSince(facts.hides, lines);
  const named = [...facts.hides.flatMap(({ tags }) => tags), ...since.flatMap(({ come }) => come)];
  const evidence = await read.sightingsOf([...new Set(named)]);
  const ground = await groundOf(read, kept, evidence);
  const kinds = new Map<string, string>(members.map(({ mark, kind }) => [mark, kind]));
  const { seq, headAfter, at, by, withdrawn, ended } = kept;
  return {
    ...said,
    hides: facts.hides.map((member) => ({
      ...inWords(member, ground),
      kind: kinds.get(member.mark) ?? null,
    })),
    id,
    seq,
    headAfter,
    at,
    by,
    house,
    covering: { id: covering, ...kept.covering },
    withdrawn,
    ended,
    evidence: evidence.map(toEvidence),
    beyond: withdrawn || ended ? [] : (outrunBy(facts.hides, lines) as Mark[]),
    doubtsSince: await doubtsSince(read, { house: house.id, hides: facts.hides, seq }),
    refusals: await refusalsBefore(read, { house: house.id, covering, seq }),
    doubts: [...ground.doubts],
    roles: [...ground.roles],
    since,
  };
}

function groundOf(
  read: RecordReader,
  { facts: { hides }, house, seq }: KeptRelease,
  evidence: readonly Sighting[],
): Promise<ReleaseGround> {
  const released = new Set(hides.flatMap(({ tags }) => tags));
  return read.releaseGround({
    house: house.id,
    seq,
    tags: evidence.map(({ tag }) => tag).filter(({ id }) => released.has(id)),
    marks: hides.flatMap(({ mark, stretch, missing }) => (stretch || missing.length > 0 ? [mark] : [])),
  });
}

/** By the grid as it was stated then: what was released does not move with a grid that is stated anew. */
function inWords(member: ReleasedMember, { axes, reader }: ReleaseGround): Omit<ReleasedMemberView, 'kind'> {
  const axis = axes.get(member.mark) ?? null;
  const name = (stretch: Stretch) => nameStretch(stretch, axis, reader);
  const { stretch, missing } = member;
  return {
    ...member,
    stretch: stretch && name(stretch),
    missing: missing.map(name),
    isWhole:
      stretch === null || (axis !== null && without([{ from: 0, to: axis.length }], [stretch]).length === 0),
    isUpright: axis?.runs === 'upright',
  };
}
