import { Fields } from '../fields.ts';
import type { LedgerEntry } from '../ledger-entry.ts';
import type { Acts, Said, State } from './state.ts';

/** Who said an entry, in the role that they had then. Throws FieldMissing. */
export function saidOf({ roles }: State, { seq, at, by }: LedgerEntry): Said {
  if (by === null) return { seq, at, by, role: null };
  const person = new Fields(by, 'by');
  return { seq, at, by: person.text('name'), role: roles.get(person.text('id')) ?? null };
}

export const PEOPLE_ACTS: Acts = {
  'role.granted': {
    1: ({ roles }, payload) => void roles.set(payload.object('person').text('id'), payload.text('role')),
  },
  'role.withdrawn': {
    1: ({ roles }, payload) => void roles.delete(payload.object('person').text('id')),
  },
};
