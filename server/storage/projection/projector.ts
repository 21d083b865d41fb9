import type { Entry, StatementKind, StatementOf } from '#domain/ledger/statements';
import type { Tx } from '../tx.ts';

export type EntryOf<K extends StatementKind> = Entry<StatementOf<K>>;

/** How statements of these kinds change the tables. */
export type Projector<K extends StatementKind> = {
  readonly [Kind in K]: (tx: Tx, entry: EntryOf<Kind>) => Promise<void>;
};
