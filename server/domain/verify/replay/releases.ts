import type { Json } from '../../ledger/canonical-json.ts';
import { Fields } from '../fields.ts';
import { HEX_HASH } from '../hashing.ts';
import { lineOf } from '../ledger-entry.ts';
import { Wrong } from '../wrong.ts';
import { hold } from './coverings.ts';
import { amend, type Act, type Acts } from './state.ts';

const give: Act = (state, payload, entry) => {
  const { seq, at, by } = entry;
  const [release, covering] = [payload.text('release'), payload.text('covering')];
  if (!state.coverings.has(covering)) throw new Wrong('release-covering', lineOf(seq), { covering });
  for (const tag of payload.objects('hides').flatMap((hidden) => hidden.texts('tags')))
    if (!state.placed.has(tag)) throw new Wrong('release-tag', lineOf(seq), { tag });
  const head = payload.object('head');
  state.given.push({
    ...{ release, covering, seq },
    head: { size: head.count('size'), hash: head.text('hash', HEX_HASH) },
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

const withdraw: Act = (state, payload, entry) => {
  const { seq, at, by } = entry;
  const release = payload.text('release');
  if (!state.releases.has(release)) throw new Wrong('release-unknown', lineOf(seq), { release });
  const reason = payload.text('reason');
  state.takenBack.set(release, { at, by: nameOf(by), reason });
  amend(state.releases, release, { withdrawn: { seq, at, by, reason } });
  hold(state, payload, entry);
};

const nameOf = (by: Json): string | null => (by === null ? null : new Fields(by, 'by').text('name'));

const stamp: Act = ({ stamped }, payload, { seq }) =>
  void stamped.push({ seq, size: payload.count('size'), head: payload.text('head', HEX_HASH) });

export const RELEASE_ACTS: Acts = {
  'head.stamped': { 1: stamp },
  'covering.released': { 1: give },
  'release.withdrawn': { 1: withdraw },
};
