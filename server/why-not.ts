import { CannotListen } from './cannot-listen.ts';
import { FolderInUse } from './storage/folder-lock.ts';
import { LedgerMismatch } from './storage/append-lines.ts';
import { EmbeddedDatabaseBroken } from './storage/open-database.ts';

/** Why the server cannot start, as a sentence for the person who starts it. */
export function sayWhyNot(error: unknown): string {
  const plain = [CannotListen, FolderInUse, LedgerMismatch, EmbeddedDatabaseBroken];
  if (plain.some((kind) => error instanceof kind)) return (error as Error).message;
  const { code = '', message } = error as NodeJS.ErrnoException;
  return SENTENCES[code] ?? `Arakabe cannot start: ${message}`;
}

const NOT_WRITABLE =
  'The data folder cannot be written. Give its owner the right to write, or choose another with ARAKABE_DATA.';
const NO_ANSWER = 'The database at DATABASE_URL does not answer. Is it running, and is the address right?';
const NOT_LET_IN = 'The database at DATABASE_URL refuses the user or the password.';

/** By the codes of the operating system and of PostgreSQL. */
const SENTENCES: Record<string, string> = {
  EACCES: NOT_WRITABLE,
  EROFS: NOT_WRITABLE,
  ENOSPC: 'The disk is full. Free some space and start again.',
  ECONNREFUSED: NO_ANSWER,
  ENOTFOUND: NO_ANSWER,
  '28P01': NOT_LET_IN,
  '28000': NOT_LET_IN,
  '3D000': 'The database named in DATABASE_URL does not exist. Create it first.',
};
