import { canonicalJson, type Json } from '#domain/ledger/canonical-json';
import { EMPTY_FRONTIER, appendLeaf, leafHash, treeHead } from '#domain/ledger/merkle-tree';
import type { ArchiveFiles } from '#domain/verify/archive-files';
import { toHex } from '#domain/verify/hashing';
import { manifestChecksum } from '#domain/verify/manifest';
import { hashing } from '../../server/storage/hashing.ts';

export type JsonRecord = { readonly [key: string]: Json };

export interface Said {
  readonly kind: string;
  readonly version?: number;
  readonly payload: JsonRecord;
  readonly at?: string;
  readonly by?: JsonRecord | null;
}

export const HOUSE = '11111111-2222-4333-8444-555555555555';
export const BY = { id: 'haru', name: 'Carpenter' };
const sha256 = (bytes: Uint8Array) => hashing.digest(bytes);
export const utf8 = (text: string) => new TextEncoder().encode(text);
export const hashOf = (bytes: Uint8Array) => toHex(sha256(bytes));

/** The ledger as the writer grows it, leaf by leaf; `heads[n]` is the head over n entries. */
export function writeLedger(said: readonly Said[]): { lines: string[]; heads: string[] } {
  let frontier = EMPTY_FRONTIER;
  const heads = [toHex(treeHead(sha256, frontier))];
  const lines = said.map(({ kind, version = 1, payload, at, by = BY }, seq) => {
    const when = at ?? new Date(Date.UTC(2026, 3, 1, 0, 0, seq)).toISOString();
    const canonical = canonicalJson({ house: HOUSE, seq, at: when, by, kind, version, payload });
    const leaf = leafHash(sha256, utf8(canonical));
    frontier = appendLeaf(sha256, frontier, leaf);
    const head = toHex(treeHead(sha256, frontier));
    heads.push(head);
    return `{"entry":${canonical},"head":"${head}","leaf":"${toHex(leaf)}"}\n`;
  });
  return { lines, heads };
}

export type Files = Map<string, Uint8Array>;

export interface Parts {
  readonly said: readonly Said[];
  readonly tables: Readonly<Record<string, readonly JsonRecord[]>>;
  readonly originals: readonly { readonly bytes: Uint8Array; readonly fileName: string }[];
}

/** An archive put together by hand, as the writer would. */
export function makeArchive({ said, tables, originals }: Parts): Files {
  const { lines, heads } = writeLedger(said);
  const files: Files = new Map([['ledger.jsonl', utf8(lines.join(''))]]);
  for (const [name, rows] of Object.entries(tables))
    files.set(`tables/${name}.json`, utf8(canonicalJson(rows)));
  for (const name of ['check.html', 'index.html']) files.set(name, utf8(`<!doctype html><title>${name}`));
  for (const { bytes } of originals) files.set(`originals/${hashOf(bytes)}.jpg`, bytes);
  const listed = originals
    .map(({ bytes, fileName }) => ({
      ...{ sha256: hashOf(bytes), bytes: bytes.length, mediaType: 'image/jpeg', fileName },
    }))
    .sort((one, other) => (one.sha256 < other.sha256 ? -1 : 1));
  const named = (test: (name: string) => boolean) =>
    [...files]
      .filter(([name]) => test(name))
      .map(([name, bytes]) => ({ name, sha256: hashOf(bytes) }))
      .sort((one, other) => (one.name < other.name ? -1 : 1));
  seal(files, {
    format: 'arakabe-archive',
    version: 1,
    house: HOUSE,
    size: said.length,
    head: heads.at(-1) ?? '',
    madeAt: '2026-05-01T00:00:00.000Z',
    originals: listed,
    pages: named((name) => name.endsWith('.html')),
    tables: named((name) => name.startsWith('tables/')),
  });
  return files;
}

/** Writes a manifest with the checksum that fits it. */
export function seal(files: Files, manifest: JsonRecord): void {
  const checksum = manifestChecksum(hashing, manifest);
  files.set('manifest.json', utf8(canonicalJson({ ...manifest, checksum })));
}

/** A page with other content, its hash and the checksum with it: nothing in the archive speaks against it. */
export function forgePage(files: Files, name: 'check.html' | 'index.html', content: string): void {
  const bytes = utf8(content);
  files.set(name, bytes);
  const manifest = readManifest(files);
  const pages = (manifest['pages'] as JsonRecord[]).map((page) =>
    page['name'] === name ? { ...page, sha256: hashOf(bytes) } : page,
  );
  seal(files, { ...manifest, pages });
}

export function readManifest(files: Files): JsonRecord {
  return JSON.parse(new TextDecoder().decode(files.get('manifest.json'))) as JsonRecord;
}

/** As the verifier reads it; in pieces of `size` bytes. */
export function inMemory(files: Files, size = 1 << 20): ArchiveFiles {
  return {
    files: [...files].map(([name, { length }]) => ({ name, bytes: length })),
    read: async function* (name) {
      const bytes = files.get(name) ?? new Uint8Array();
      for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
    },
  };
}
