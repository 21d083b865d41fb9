import type { Fields } from '../fields.ts';
import type { LedgerEntry } from '../ledger-entry.ts';
import type { Act, Acts, State } from './state.ts';

const place: Act = (state, payload, entry) => stand(state, payload, entry, null);

const supersede: Act = (state, payload, entry) => {
  const old = payload.text('supersedes');
  state.tags.delete(old);
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

export const TAG_ACTS: Acts = {
  'tag.placed': { 1: place, 2: place },
  'tag.superseded': { 1: supersede, 2: supersede },
  'tag.withdrawn': { 1: ({ tags }, payload) => void tags.delete(payload.text('tag')) },
};
