import type { AccountView } from '#domain/contract/views';
import type { Person } from '#domain/contract/shapes';
import type { Accounts } from './accounts.ts';
import type { Calendars } from './calendars.ts';
import type { PhotoFiles } from './photo-files.ts';
import type { Imaging, Paper } from './ports.ts';
import type { SheetReader } from './read-sheet.ts';
import type { RecordStore } from './record-store.ts';
import type { StampLog, TimeStamps } from './stamps.ts';

/** What a use case works with. */
export interface Context {
  readonly store: RecordStore;
  readonly accounts: Accounts;
  readonly calendars: Calendars;
  readonly files: PhotoFiles;
  readonly imaging: Imaging;
  readonly paper: Paper;
  readonly sheets: SheetReader;
  /** null: no time-stamp service is configured. */
  readonly timeStamps: TimeStamps | null;
  readonly stampLog: StampLog;
  readonly now: () => Date;
}

/** How the ledger names the one who speaks. */
export function speaker({ id, name }: AccountView): Person {
  return { id, name };
}
