import type { Fields } from '../fields.ts';
import { HEX_HASH } from '../hashing.ts';
import { lineOf } from '../ledger-entry.ts';
import { Wrong } from '../wrong.ts';
import { hold, nameOf } from './coverings.ts';
import { saidOf } from './people.ts';
import { amend, type AcceptedGap, type Act, type Acts, type ReleasedMember } from './state.ts';

const give: Act = (state, payload, entry) => {
  const { seq, at, by } = entry;
  const [release, covering] = [payload.text('release'), payload.text('covering')];
  if (!state.coverings.has(covering)) throw new Wrong('release-covering', lineOf(seq), { covering });
  const hides = payload.objects('hides');
  for (const tag of hides.flatMap((hidden) => hidden.texts('tags')))
    if (!state.placed.has(tag)) throw new Wrong('release-tag', lineOf(seq), { tag });
  const head = payload.object('head');
  state.given.push({
    ...{ release, covering, name: nameOf(state, covering), ...saidOf(state, entry) },
    head: { size: head.count('size'), hash: head.text('hash', HEX_HASH) },
    note: payload.textOr('note', ''),
    members: hides.map(releasedMember),
    accepted: acceptedIn(payload),
  });
  state.releases.set(release, {
    ...{ release, covering, seq, at, by },
    head: payload.any('head'),
    hides: payload.any('hides'),
    waived: payload.any('waived', []),
    note: payload.any('note', ''),
    withdrawn: null,
  });
  hold(state, payload, entry);
};

function releasedMember(hidden: Fields): ReleasedMember {
  return {
    mark: hidden.text('mark'),
    tags: hidden.texts('tags'),
    isHiddenBefore: hidden.any('state', null) === 'hidden-before',
  };
}

function acceptedIn(payload: Fields): AcceptedGap[] {
  if (!payload.has('waived')) return [];
  return payload.objects('waived').map((gap) => ({ mark: gap.text('mark'), reason: gap.text('reason') }));
}

const withdraw: Act = (state, payload, entry) => {
  const { seq, at, by } = entry;
  const release = payload.text('release');
  if (!state.releases.has(release)) throw new Wrong('release-unknown', lineOf(seq), { release });
  const reason = payload.text('reason');
  state.takenBack.set(release, { ...saidOf(state, entry), reason });
  amend(state.releases, release, { withdrawn: { seq, at, by, reason } });
  hold(state, payload, entry);
};

const stamp: Act = ({ stamped }, payload, { seq }) =>
  void stamped.push({ seq, size: payload.count('size'), head: payload.text('head', HEX_HASH) });

export const RELEASE_ACTS: Acts = {
  'head.stamped': { 1: stamp },
  'covering.released': { 1: give },
  'release.withdrawn': { 1: withdraw },
};
