import type { Person } from '#domain/contract/shapes';
import type { HouseEvent } from '#domain/contract/house-events';
import type { Entry, Statement } from '#domain/ledger/statements';
import { Failure } from '../services/failure.ts';
import type { HouseWriting, RecordStore, RestoredEntry } from '../services/record-store.ts';
import { appendLines } from './append-lines.ts';
import { refreshFindings } from './findings/refresh.ts';
import { nothingTouched, touch, type Touched } from './findings/touched.ts';
import type { LedgerKeeper } from './ledger-folder.ts';
import { LedgerWriter, announce, lockLedger, openLedger } from './ledger-store.ts';
import type { Tx } from './tx.ts';
import type { Db } from './open-database.ts';
import { recordReader } from './record-reader.ts';

export interface RecordStoreParts {
  readonly db: Db;
  /** null: the database itself is durable. */
  readonly keeper: LedgerKeeper | null;
  readonly now: () => Date;
  /** Puts the making of pictures in the queue, inside the transaction. */
  readonly enqueuePictures: (tx: Tx, photo: string) => Promise<void>;
  /** The same for the measuring of regions. */
  readonly enqueueLegibility: (tx: Tx, photo: string) => Promise<void>;
  /** And for the stamping of a house's tree head. */
  readonly enqueueStamp: (tx: Tx, house: string) => Promise<void>;
}

export function recordStore(parts: RecordStoreParts): RecordStore {
  return {
    read: recordReader(parts.db),
    snapshot: (work) =>
      parts.db
        .transaction()
        .setIsolationLevel('repeatable read')
        .setAccessMode('read only')
        .execute((tx) => work(recordReader(tx))),
    write: (house, by, work) => inHouse(parts, house, by, false, work),
    open: (house, by, work) => inHouse(parts, house, by, true, work),
    restore: (house, entries) => restore(parts, house, entries),
  };
}

/** One transaction under the house's lock; resolves when what was said is on disk. */
async function inHouse<T>(
  parts: RecordStoreParts,
  house: string,
  by: Person | null,
  create: boolean,
  work: (writing: HouseWriting, isNew: boolean) => Promise<T>,
): Promise<T> {
  const { result, size, written } = await parts.db.transaction().execute(async (tx) => {
    const isNew = create && (await openLedger(tx, house));
    const frontier = await lockLedger(tx, house);
    if (!frontier) throw new Failure('not-found', { what: 'house' });
    const writer = new LedgerWriter(tx, house, frontier);
    const touched = nothingTouched();
    const result = await work(houseWriting(parts, tx, writer, { house, by, touched }), isNew);
    await refreshFindings(tx, house, touched);
    return { result, size: writer.nextSeq, written: writer.written };
  });
  // Also when nothing is new: an entry whose first answer failed is accepted only once it is on disk.
  await parts.keeper?.keep(house, size, written);
  return result;
}

async function restore(
  parts: RecordStoreParts,
  house: string,
  entries: AsyncIterable<RestoredEntry>,
): Promise<boolean> {
  const written = await parts.db.transaction().execute(async (tx) => {
    if (!(await openLedger(tx, house))) return null;
    const lines = await appendLines(tx, house, () => entries);
    for (const { id } of await tx.selectFrom('photo').select('id').where('houseId', '=', house).execute()) {
      await parts.enqueuePictures(tx, id);
      await parts.enqueueLegibility(tx, id);
    }
    return lines;
  });
  if (written) await parts.keeper?.keep(house, written.length, written);
  return written !== null;
}

function houseWriting(
  parts: RecordStoreParts,
  tx: Tx,
  writer: LedgerWriter,
  { house, by, touched }: { house: string; by: Person | null; touched: Touched },
): HouseWriting {
  return {
    ...recordReader(tx),
    houseId: house,
    say: async (statement: Statement): Promise<Entry> => {
      const entry = await writer.say(statement, parts.now(), by);
      touch(touched, entry);
      await announce(tx, house, eventOf(entry));
      return entry;
    },
    requestPictures: async (photo) => {
      await tx.deleteFrom('picture').where('photoId', '=', photo).execute();
      await parts.enqueuePictures(tx, photo);
    },
    requestLegibility: (photo) => parts.enqueueLegibility(tx, photo),
    requestStamp: () => parts.enqueueStamp(tx, house),
  };
}

function eventOf(entry: Entry): HouseEvent {
  const photo = 'photo' in entry.payload ? entry.payload.photo : null;
  return { type: 'statement', seq: entry.seq, kind: entry.kind, photo };
}
