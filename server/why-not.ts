import { CannotListen } from './cannot-listen.ts';
import { ConfigError } from './config.ts';
import { LedgerMismatch } from './storage/append-lines.ts';
import { DataFolderUnusable } from './storage/data-folder.ts';
import { FolderInUse } from './storage/folder-lock.ts';
import { EmbeddedDatabaseBroken, NoPostgres } from './storage/open-database.ts';

const PLAIN = [
  ...[ConfigError, CannotListen, DataFolderUnusable, FolderInUse],
  ...[LedgerMismatch, EmbeddedDatabaseBroken, NoPostgres],
];

/** Why the server cannot start, as sentences for the person who starts it, one a line. */
export function sayWhyNot(error: unknown): string {
  if (PLAIN.some((kind) => error instanceof kind)) return (error as Error).message;
  const { code = '', message } = error as NodeJS.ErrnoException;
  return SENTENCES[code] ?? `Arakabe cannot start: ${message}`;
}

const NO_ANSWER = 'The database at DATABASE_URL does not answer. Is it running, and is the address right?';
const NOT_LET_IN = 'The database at DATABASE_URL refuses the user or the password.';
const NOT_WRITABLE = 'Something in the data folder cannot be written. Give its owner the right to write.';

/** By the codes of the operating system and of PostgreSQL. */
const SENTENCES: Record<string, string> = {
  EACCES: NOT_WRITABLE,
  EROFS: NOT_WRITABLE,
  ENOSPC: 'The disk is full. Free some space and start again.',
  ECONNREFUSED: NO_ANSWER,
  ECONNRESET: NO_ANSWER,
  ENOTFOUND: NO_ANSWER,
  EAI_AGAIN: NO_ANSWER,
  EHOSTUNREACH: NO_ANSWER,
  ENETUNREACH: NO_ANSWER,
  ETIMEDOUT: NO_ANSWER,
  ERR_INVALID_URL: 'DATABASE_URL is no address of a database, such as postgres://user@host:5432/name.',
  '28P01': NOT_LET_IN,
  '28000': NOT_LET_IN,
  '3D000': 'The database named in DATABASE_URL does not exist. Create it first.',
};
