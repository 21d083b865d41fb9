import type { Fields } from '../fields.ts';
import type { LedgerEntry } from '../ledger-entry.ts';
import { hear } from './doubts.ts';
import { saidOf } from './people.ts';
import type { Act, Acts, State } from './state.ts';

const place: Act = (state, payload, entry) => stand(state, payload, entry, null);

const supersede: Act = (state, payload, entry) => {
  const old = payload.text('supersedes');
  state.tags.delete(old);
  const [mark, stage] = [payload.text('mark'), payload.text('stage')];
  hear(state, old, { ...saidOf(state, entry), what: 'superseded', mark, stage });
  stand(state, payload, entry, old);
};

/** In the first versions a tag said nothing of the part of its member. */
function stand(
  { tags, placed }: State,
  payload: Fields,
  { at, by }: LedgerEntry,
  supersedes: string | null,
): void {
  const tag = payload.text('tag');
  placed.add(tag);
  tags.set(tag, {
    tag,
    photo: payload.text('photo'),
    mark: payload.text('mark'),
    stage: payload.text('stage'),
    region: payload.any('region'),
    stretch: payload.any('stretch', null),
    note: payload.any('note', ''),
    supersedes,
    saidAt: at,
    saidBy: by,
  });
}

const withdraw: Act = (state, payload, entry) => {
  const tag = payload.text('tag');
  state.tags.delete(tag);
  hear(state, tag, { ...saidOf(state, entry), what: 'withdrawn', reason: payload.textOr('reason', '') });
};

export const TAG_ACTS: Acts = {
  'tag.placed': { 1: place, 2: place },
  'tag.superseded': { 1: supersede, 2: supersede },
  'tag.withdrawn': { 1: withdraw },
};
