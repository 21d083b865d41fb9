import type { ArchiveSizeView } from '#domain/contract/views';
import { dayOf } from '#domain/record/zoned-day';
import type { Context } from '../context.ts';
import { Failure } from '../failure.ts';
import { reportOf } from '../report.ts';
import { archiveFiles } from './archive-files.ts';
import type { ArchivedPhoto } from './archive-material.ts';
import { indexPage } from './index-page.ts';
import { zipBytes, zipStream } from './zip-stream.ts';

export interface Archive {
  readonly fileName: string;
  /** Exactly so many come. */
  readonly bytes: number;
  /** May be read once, as slowly as one likes. */
  readonly content: AsyncGenerator<Uint8Array, void>;
}

/**
 * All of a house as one file, as of the present size of its ledger, whatever is said while it is read. The tables and
 * the page are held in memory; ledger and originals are read as they are asked for. Throws Failure where an original
 * is not on disk as it should be.
 */
export async function exportHouse(
  context: Context,
  house: string,
  lang: 'en' | 'ja',
  checkPage: Uint8Array,
): Promise<Archive> {
  const { material, report } = await context.store.snapshot(async (read) => ({
    material: await read.archiveMaterial(house),
    report: reportOf(context, await read.reportMaterial(house, 'all'), await read.zone(house)),
  }));
  await assertOriginals(context, material.tables.photos);
  const madeAt = context.now();
  const index = new TextEncoder().encode(indexPage(material, { house, lang, madeAt, report }));
  const pages = { 'index.html': index, 'check.html': checkPage };
  const files = archiveFiles(context, { house, material, pages, madeAt });
  return {
    fileName: `arakabe-${plainName(material.house.name)}-${dayOf(madeAt.toISOString(), material.house.zone)}.zip`,
    bytes: zipBytes(files),
    content: zipStream(files, madeAt),
  };
}

/** About how large the archive is going to be: without its pages and tables, which are small beside the rest. */
export async function archiveSize({ store }: Context, house: string): Promise<ArchiveSizeView> {
  const [{ size, bytes }, originals] = [
    await store.read.ledgerExtent(house),
    await store.read.originals(house),
  ];
  return { entries: size, originals: originals.count, bytes: bytes + originals.bytes };
}

/** Before the first byte leaves: once it has, nothing can be said any more but by breaking off. */
async function assertOriginals({ files }: Context, photos: readonly ArchivedPhoto[]): Promise<void> {
  for (const { sha256, bytes, fileName } of photos)
    if ((await files.originalBytes(sha256)) !== bytes)
      throw new Failure('original-missing', { file: fileName, sha256 });
}

function plainName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return plain === '' ? 'house' : plain.toLowerCase();
}
