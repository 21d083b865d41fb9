import type { Transaction } from 'kysely';
import type { Tables } from './tables.ts';

/** An open transaction; dead once it has ended. */
export type Tx = Transaction<Tables>;
