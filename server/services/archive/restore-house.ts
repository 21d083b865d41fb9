import { Readable } from 'node:stream';
import { parseEntry } from '#domain/ledger/statements';
import { pieces, readWhole, type ArchiveFiles } from '#domain/verify/archive-files';
import { LEDGER, MANIFEST, originalFile } from '#domain/verify/file-names';
import { parseLine } from '#domain/verify/ledger-entry';
import { linesOf } from '#domain/verify/lines';
import { parseManifest, type ManifestOriginal } from '#domain/verify/manifest';
import type { Hashing } from '#domain/verify/hashing';
import type { Verdict } from '#domain/verify/verify-archive';
import type { Context } from '../context.ts';
import { adoptHouses } from '../people.ts';
import type { RestoredEntry } from '../record-store.ts';

/** Why a house is not taken in, as a sentence for whoever asked for it. Nothing of it is in the record then. */
export class RestoreRefused extends Error {}

/** Who keeps the record of the house now: the account that took it over, or null where nobody had to. */
export interface Restored {
  readonly adoptedBy: string | null;
  readonly hasAccounts: boolean;
}

/**
 * Gives this instance a house that it does not have, from an archive in which nothing is wrong: `verdict` is that of
 * this very archive. Originals first, then the ledger by its exact text, from which the tables follow. An archive that
 * changes in between is found out: each original is hashed again, and each tree head compared. Throws RestoreRefused.
 */
export async function restoreHouse(
  context: Context,
  archive: ArchiveFiles,
  hashing: Hashing,
  { house, name, bytes, entries }: Verdict,
): Promise<Restored> {
  const { store, files, accounts } = context;
  if (await store.read.hasHouse(house))
    throw new RestoreRefused(`The house “${name}” (${house}) is here already. Nothing was changed.`);
  if ((await files.freeBytes()) < bytes)
    throw new RestoreRefused(`Its originals need ${bytes} bytes, and the disk has not so many left.`);
  await assertReadable(archive);
  const manifest = parseManifest(hashing, await readWhole(pieces(archive, MANIFEST)));
  for (const original of manifest.originals) await takeOriginal(context, archive, original);
  if (!(await store.restore(house, entriesOf(archive, entries))))
    throw new RestoreRefused(`The house “${name}” (${house}) has come here meanwhile. Nothing was changed.`);
  return takeOver(context, house, await accounts.anyExists());
}

/** A newer program may have said what this one cannot read: found out before anything is written. */
async function assertReadable(archive: ArchiveFiles): Promise<void> {
  let line = 0;
  for await (const { canonical } of entriesOf(archive, Infinity)) {
    line += 1;
    try {
      parseEntry(JSON.parse(canonical));
    } catch {
      throw new RestoreRefused(
        `${LEDGER}, line ${line}: this program cannot read what is said there, though it is not altered. ` +
          'Restore the archive with the version that made it, or a newer one. Nothing was changed.',
      );
    }
  }
}

async function takeOriginal(
  { files }: Context,
  archive: ArchiveFiles,
  { sha256, bytes, mediaType }: ManifestOriginal,
): Promise<void> {
  const name = originalFile(sha256, mediaType);
  const incoming = await files.receive(Readable.from(pieces(archive, name)), bytes);
  try {
    if (incoming.tooLarge || incoming.sha256 !== sha256)
      throw new RestoreRefused(`${name}: it was altered since the archive was checked. No house was made.`);
    await files.keep(incoming);
  } finally {
    await files.discard(incoming);
  }
}

async function* entriesOf(archive: ArchiveFiles, limit: number): AsyncGenerator<RestoredEntry> {
  let given = 0;
  for await (const line of linesOf(pieces(archive, LEDGER), LEDGER)) {
    given += 1;
    if (given > limit)
      throw new RestoreRefused(`${LEDGER}: it has grown since the archive was checked. No house was made.`);
    yield parseLine(line);
  }
}

/** The people that the ledger names have no account here, unless it is where they come from. */
async function takeOver(context: Context, house: string, hasAccounts: boolean): Promise<Restored> {
  const isOwned = !(await context.store.read.housesWithoutOwner()).includes(house);
  const keeper = hasAccounts && !isOwned ? await context.accounts.keeper() : undefined;
  if (!keeper) return { adoptedBy: null, hasAccounts };
  await adoptHouses(context, keeper);
  return { adoptedBy: keeper.name, hasAccounts };
}
