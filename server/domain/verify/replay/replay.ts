import type { Json } from '../../ledger/canonical-json.ts';
import { FieldMissing } from '../fields.ts';
import type { TableName } from '../file-names.ts';
import { lineOf, type LedgerEntry } from '../ledger-entry.ts';
import { Wrong } from '../wrong.ts';
import { COVERING_ACTS } from './coverings.ts';
import { DOUBT_ACTS } from './doubts.ts';
import { MEMBER_ACTS } from './members.ts';
import { PEOPLE_ACTS } from './people.ts';
import { PHOTO_ACTS } from './photos.ts';
import { RELEASE_ACTS } from './releases.ts';
import { emptyState, type Act, type Acts, type State } from './state.ts';
import { TAG_ACTS } from './tags.ts';

const name: Act = (state, payload) => {
  state.houseName = payload.text('name');
  state.houseZone = payload.text('zone');
};

/** Said and kept, and of no account for the tables. */
const nothing: Act = () => undefined;

/** Every kind and version that there has ever been; a test holds it against what is written today. */
export const ACTS: Acts = {
  ...PEOPLE_ACTS,
  ...MEMBER_ACTS,
  ...PHOTO_ACTS,
  ...TAG_ACTS,
  ...DOUBT_ACTS,
  ...COVERING_ACTS,
  ...RELEASE_ACTS,
  'house.created': { 1: name, 2: name },
  'house.changed': { 1: name, 2: name },
  'guest.admitted': { 1: nothing },
  'guest.ended': { 1: nothing },
  'password.link-made': { 1: nothing },
  'password.renewed': { 1: nothing },
  'photo.position-added': { 1: nothing },
  'clock.marked': { 1: nothing },
  'clock.withdrawn': { 1: nothing },
  'grid.stated': { 1: nothing },
  'requirements.stated': { 1: nothing },
  'protection.laid': { 1: nothing },
  'protection.changed': { 1: nothing },
  'protection.lifted': { 1: nothing },
  'protection.lifting-withdrawn': { 1: nothing },
  'protection.withdrawn': { 1: nothing },
  'release-rule.stated': { 1: nothing },
  'term.entered': { 1: nothing },
  'term.removed': { 1: nothing },
  'note.written': { 1: nothing },
};

/** The record as it follows from the ledger, by the verifier's own reading of it. */
export class Replay {
  readonly state: State = emptyState();

  /** Throws Wrong where the kind or version is not known or the statement cannot be read. */
  apply(entry: LedgerEntry): void {
    const { kind, version, seq, payload } = entry;
    const act = Object.hasOwn(ACTS, kind) ? ACTS[kind]?.[version] : undefined;
    if (!act) throw new Wrong('entry-kind', lineOf(seq), { kind, version });
    try {
      act(this.state, payload, entry);
    } catch (error) {
      if (error instanceof FieldMissing) throw new Wrong('entry-form', lineOf(seq), { field: error.field });
      throw error;
    }
  }

  /** The rows of a table in their order: by key in UTF-16 code units, releases as they were given. */
  rows(table: TableName): Json[] {
    const rows = [...this.state[table]];
    if (table !== 'releases') rows.sort(([one], [other]) => (one < other ? -1 : 1));
    return rows.map(([, row]) => row);
  }
}
