import { createHash } from 'node:crypto';
import type { MediaType } from '#domain/contract/shapes';
import { canonicalJson } from '#domain/ledger/canonical-json';
import type { Context } from '../context.ts';
import type { ArchiveMaterial, ArchivedPhoto } from './archive-material.ts';
import type { OutgoingFile } from './zip-stream.ts';

/** The files of an archive, in the order in which they are written. The format: DEVELOPERS.md. */

const EXTENSIONS: Readonly<Record<MediaType, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/tiff': 'tif',
  'image/heic': 'heic',
  'image/avif': 'avif',
};

/** Where an original lies in its archive. */
export function originalPath({ sha256, mediaType }: Pick<ArchivedPhoto, 'sha256' | 'mediaType'>): string {
  return `originals/${sha256}.${EXTENSIONS[mediaType as MediaType]}`;
}

export interface ArchiveOf {
  readonly house: string;
  readonly material: ArchiveMaterial;
  readonly pages: Readonly<Record<'index.html' | 'check.html', Uint8Array>>;
  readonly madeAt: Date;
}

export function archiveFiles(
  context: Context,
  { house, material, pages, madeAt }: ArchiveOf,
): OutgoingFile[] {
  const { tables, ledger } = material;
  const photos = [...tables.photos].sort((one, other) => (one.sha256 < other.sha256 ? -1 : 1));
  const page = [held('check.html', pages['check.html']), held('index.html', pages['index.html'])];
  const table = Object.entries(tables)
    .map(([name, rows]) => held(`tables/${name}.json`, utf8(canonicalJson(rows))))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
  const manifest = {
    format: 'arakabe-archive',
    version: 1,
    ...{ house, size: ledger.size, head: ledger.head, madeAt: madeAt.toISOString() },
    originals: photos.map(({ sha256, bytes, mediaType, fileName }) => ({
      sha256,
      bytes,
      mediaType,
      fileName,
    })),
    pages: page.map(({ name, sha256 }) => ({ name, sha256 })),
    tables: table.map(({ name, sha256 }) => ({ name, sha256 })),
  };
  const checksum = hexOf(utf8(canonicalJson(manifest)));
  return [
    held('manifest.json', utf8(canonicalJson({ ...manifest, checksum }))),
    { name: 'ledger.jsonl', bytes: ledger.bytes, content: () => ledgerContent(context, house, ledger.size) },
    ...table,
    ...page,
    ...photos.map((photo) => ({
      ...{ name: originalPath(photo), bytes: photo.bytes },
      content: () => context.files.readOriginal(photo.sha256),
    })),
  ];
}

interface HeldFile extends OutgoingFile {
  readonly sha256: string;
}

function held(name: string, bytes: Uint8Array): HeldFile {
  const content = async function* () {
    yield bytes;
  };
  return { name, bytes: bytes.length, sha256: hexOf(bytes), content };
}

const PAGE = 200;

/** An entry, once there, never changes: the first `size` are the same whenever they are read. */
async function* ledgerContent({ store }: Context, house: string, size: number): AsyncGenerator<Uint8Array> {
  for (let from = 0; from < size; from += PAGE)
    yield utf8(await store.read.ledgerText(house, from, Math.min(size, from + PAGE)));
}

const utf8 = (text: string) => new TextEncoder().encode(text);
const hexOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
