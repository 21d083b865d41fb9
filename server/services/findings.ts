import type { FindingView, FindingsView } from '#domain/contract/findings';
import type { FindingKind } from '#domain/record/findings/kinds';
import type { AccountView } from '#domain/contract/views';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { FindingFilter, HouseWriting } from './record-store.ts';
import { someMarks } from './some-marks.ts';

export async function listFindings(
  { store: { read } }: Context,
  house: string,
  filter: FindingFilter & { offset: number },
): Promise<FindingsView> {
  const { offset, limit } = filter;
  const found = await read.findings(house, { ...filter, limit: limit + 1 });
  return {
    counts: await read.findingCounts(house),
    findings: found.slice(0, limit),
    next: found.length > limit ? offset + limit : null,
  };
}

/**
 * Accepts findings by name and reason, all or none. Each is named with the basis that was looked at: what
 * has changed meanwhile was not looked at and is refused.
 */
export async function acceptFindings(
  context: Context,
  account: AccountView,
  house: string,
  { findings, reason }: { findings: readonly { key: string; basis: string }[]; reason: string },
): Promise<FindingView[]> {
  return context.store.write(house, speaker(account), async (writing) => {
    const keys = findings.map(({ key }) => key);
    const read = () => writing.findings(house, { keys, limit: keys.length });
    const found = new Map((await read()).map((finding) => [finding.key, finding]));
    const seen = findings.map(({ key, basis }) => {
      const now = found.get(key);
      if (!now || now.basis !== basis) throw new Failure('finding-changed');
      return now;
    });
    // Said again, word for word, it is the same word.
    const fresh = seen.filter(({ answer }) => !(answer?.stands === true && answer.reason === reason));
    if (fresh.length > 0) await assertOthersDoubts(writing, account, fresh);
    if (fresh.length > 0)
      await writing.say({
        kind: 'findings.accepted',
        version: 1,
        payload: { findings: fresh.map(subjectsOf), reason },
      });
    return read();
  });
}

/** Whoever said a tag does not answer the doubt of it alone, where two people stand behind every release. */
async function assertOthersDoubts(
  writing: HouseWriting,
  account: AccountView,
  findings: readonly FindingView[],
): Promise<void> {
  const doubts = findings.filter(({ kind }) => kind === 'disputed');
  const house = doubts.length > 0 ? await writing.house(writing.houseId, account.id) : undefined;
  if (!house?.fourEyes) return;
  const own = doubts.filter(({ taggedBy }) => taggedBy?.id === account.id);
  if (own.length > 0) throw new Failure('doubt-of-own-tag', someMarks(own.flatMap(({ marks }) => marks)));
  if (house.role === 'inspector') return;
  const others = await underRelease(writing, account, doubts);
  if (others.length > 0)
    throw new Failure('doubt-under-release', someMarks(others.flatMap(({ marks }) => marks)));
}

/**
 * Doubts of what somebody else's release over an open covering rests on. With the answer that release would hold
 * again, so only whoever gave it, whoever doubts, or another inspector answers.
 */
async function underRelease(
  writing: HouseWriting,
  account: AccountView,
  doubts: readonly FindingView[],
): Promise<FindingView[]> {
  const open = (await writing.coverings(writing.houseId)).filter(({ closed }) => closed === null);
  const ids = open.flatMap(({ hold }) => hold.release ?? []);
  const releases = await Promise.all(ids.map((id) => writing.release(id)));
  const rests = new Set(
    releases
      .filter((release) => release?.by?.id !== account.id)
      .flatMap((release) => release?.facts.hides.flatMap(({ tags }) => tags) ?? []),
  );
  const tags = await writing.sightingsOf(doubts.flatMap((doubt) => doubt.tags.map(({ tag }) => tag)));
  const doubted = new Set(
    tags
      .filter(({ tag }) => tag.disputed?.by?.id !== account.id && rests.has(tag.id))
      .map(({ tag }) => tag.id),
  );
  return doubts.filter((doubt) => doubt.tags.some(({ tag }) => doubted.has(tag)));
}

/** Takes an acceptance back; without one nothing is said. */
export async function reopenFinding(
  context: Context,
  account: AccountView,
  house: string,
  { key, reason }: { key: string; reason: string },
): Promise<FindingView> {
  return context.store.write(house, speaker(account), async (writing) => {
    const read = async () => {
      const [found] = await writing.findings(house, { keys: [key], limit: 1 });
      if (!found) throw new Failure('finding-changed');
      return found;
    };
    const before = await read();
    if (!before.answer) return before;
    const { basis: _, ...about } = subjectsOf(before);
    await writing.say({ kind: 'finding.reopened', version: 1, payload: { ...about, reason } });
    return read();
  });
}

function subjectsOf({ key, kind, basis, photos, marks, covering }: FindingView): {
  key: string;
  kind: FindingKind;
  basis: string;
} & Pick<FindingView, 'photos' | 'marks' | 'covering'> {
  return { key, kind, basis, photos, marks, covering };
}
