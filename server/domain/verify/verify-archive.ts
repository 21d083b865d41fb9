import { pieces, readWhole, type ArchiveFiles } from './archive-files.ts';
import { assertFiles, assertSameLedger } from './check-manifest.ts';
import { assertPaper, type Paper, type PaperVerdict } from './check-paper.ts';
import { assertReleases, assertStamps } from './check-releases.ts';
import { assertTable } from './check-table.ts';
import { LEDGER, MANIFEST, TABLES, originalFile, tableFile } from './file-names.ts';
import { toHex, type Hashing } from './hashing.ts';
import { parseManifest, type Manifest, type ManifestOriginal } from './manifest.ts';
import { readLedger, type ReadLedger } from './read-ledger.ts';
import { tellCoverings, type ToldCovering } from './told-coverings.ts';
import { Wrong } from './wrong.ts';

/** What was checked, of an archive in which nothing is wrong. */
export interface Verdict {
  readonly house: string;
  readonly name: string;
  /** Of the house; IANA, as the ledger says it. */
  readonly zone: string;
  readonly entries: number;
  readonly head: string;
  readonly madeAt: string;
  readonly originals: number;
  readonly bytes: number;
  /** Those that stand. */
  readonly records: number;
  readonly releases: number;
  /** Of these. */
  readonly takenBack: number;
  /** What the ledger says of releases and closings, to be read from here and not from a page of the archive. */
  readonly told: readonly ToldCovering[];
  /** Entries whose time lies before that of the one before. */
  readonly back: readonly number[];
  /** null: nothing to compare with was given. */
  readonly paper: PaperVerdict | null;
}

export interface VerifyOptions {
  readonly paper?: Paper | null;
  readonly progress?: (done: number, total: number) => void;
}

/**
 * Reads an archive as somebody who trusts nothing in it: the ledger entry by entry, each release, the tables against
 * a replay of the ledger, each original against its hash. Throws Wrong with the first thing that is wrong.
 * What it cannot tell: whether the whole was written anew, which only a tree head noted elsewhere shows; and what the
 * two pages say, whose hashes stand in the manifest and find damage only.
 */
export async function verifyArchive(
  archive: ArchiveFiles,
  hashing: Hashing,
  { paper = null, progress = () => undefined }: VerifyOptions = {},
): Promise<Verdict> {
  const total = archive.files.reduce((sum, { bytes }) => sum + bytes, 0);
  const names = new Set(archive.files.map(({ name }) => name));
  let done = 0;
  const read = (file: string) => {
    if (!names.has(file)) throw new Wrong('file-missing', { file });
    return pieces(archive, file, (bytes) => progress((done += bytes), total));
  };
  const manifest = parseManifest(hashing, await readWhole(read(MANIFEST)));
  assertFiles(archive, manifest);
  const ledger = await readLedger(hashing, read(LEDGER));
  assertSameLedger(manifest, ledger);
  assertReleases(hashing, ledger);
  assertStamps(ledger);
  const compared = paper && assertPaper(paper, ledger);
  await assertTables(hashing, manifest, ledger, read);
  for (const { name, sha256 } of manifest.pages) {
    const { hash } = await hashOf(hashing, read(name));
    if (hash !== sha256) throw new Wrong('page-hash', { file: name }, { found: hash, expected: sha256 });
  }
  for (const original of manifest.originals) await assertOriginal(hashing, original, read);
  return { ...describe(manifest, ledger), paper: compared };
}

type Read = (file: string) => AsyncIterable<Uint8Array>;

async function assertTables(
  hashing: Hashing,
  manifest: Manifest,
  { replay }: ReadLedger,
  read: Read,
): Promise<void> {
  for (const table of TABLES) {
    const file = tableFile(table);
    const expected = manifest.tables.find(({ name }) => name === file)?.sha256 ?? '';
    const bytes = await readWhole(read(file));
    assertTable(file, bytes, replay.rows(table));
    const found = toHex(hashing.digest(bytes));
    if (found !== expected) throw new Wrong('table-hash', { file: MANIFEST }, { file, found, expected });
  }
}

async function assertOriginal(
  hashing: Hashing,
  { sha256, bytes, mediaType }: ManifestOriginal,
  read: Read,
): Promise<void> {
  const file = originalFile(sha256, mediaType);
  const { hash, length } = await hashOf(hashing, read(file));
  if (length !== bytes) throw new Wrong('original-length', { file }, { found: length, expected: bytes });
  if (hash !== sha256) throw new Wrong('original-hash', { file }, { found: hash, expected: sha256 });
}

async function hashOf(hashing: Hashing, source: AsyncIterable<Uint8Array>) {
  const running = hashing.begin();
  let length = 0;
  for await (const piece of source) {
    running.add(piece);
    length += piece.length;
  }
  return { hash: toHex(running.digest()), length };
}

function describe({ house, head, madeAt, originals }: Manifest, { tree, replay, back }: ReadLedger) {
  const { houseName, houseZone, tags, given, takenBack } = replay.state;
  return {
    ...{ house, head, madeAt, back },
    name: houseName,
    zone: houseZone,
    entries: tree.size,
    originals: originals.length,
    bytes: originals.reduce((sum, { bytes }) => sum + bytes, 0),
    records: tags.size,
    releases: given.length,
    takenBack: takenBack.size,
    told: tellCoverings(replay.state),
  };
}
