import { canonicalJson } from '../ledger/canonical-json.ts';
import { isLitter, type ArchiveFiles } from './archive-files.ts';
import type { JsonObject } from './fields.ts';
import { LEDGER, MANIFEST, PAGES, TABLES, originalFile, tableFile } from './file-names.ts';
import { toHex } from './hashing.ts';
import type { Manifest } from './manifest.ts';
import type { ReadLedger } from './read-ledger.ts';
import { Wrong } from './wrong.ts';

const PLACE = { file: MANIFEST };

/** Whether exactly those files are there of which the manifest speaks, each once. Throws Wrong. */
export function assertFiles({ files }: ArchiveFiles, manifest: Manifest): void {
  assertNames('pages', manifest.pages, [...PAGES]);
  assertNames('tables', manifest.tables, TABLES.map(tableFile));
  const expected = new Set([
    ...[MANIFEST, LEDGER],
    ...[...manifest.pages, ...manifest.tables].map(({ name }) => name),
    ...manifest.originals.map(({ sha256, mediaType }) => originalFile(sha256, mediaType)),
  ]);
  const found = new Set<string>();
  for (const { name } of files) {
    if (isLitter(name)) continue;
    if (found.has(name)) throw new Wrong('file-twice', { file: name });
    if (!expected.has(name)) throw new Wrong('file-extra', { file: name });
    found.add(name);
  }
  for (const name of expected) if (!found.has(name)) throw new Wrong('file-missing', { file: name });
}

function assertNames(
  field: string,
  listed: readonly { readonly name: string }[],
  expected: readonly string[],
): void {
  if (listed.map(({ name }) => name).join('\n') !== expected.join('\n'))
    throw new Wrong('manifest-form', PLACE, { field });
}

/** Whether the manifest says of the ledger what follows from it. Throws Wrong. */
export function assertSameLedger(manifest: Manifest, { house, tree, replay }: ReadLedger): void {
  const head = toHex(tree.head());
  if (manifest.size !== tree.size)
    throw new Wrong('manifest-size', PLACE, { found: manifest.size, expected: tree.size });
  if (manifest.head !== head)
    throw new Wrong('manifest-head', PLACE, { found: manifest.head, expected: head });
  if (manifest.house !== house)
    throw new Wrong('manifest-house', PLACE, { found: manifest.house, expected: house });
  assertOriginals(manifest, [...replay.state.photos.values()]);
}

function assertOriginals({ originals }: Manifest, photos: readonly JsonObject[]): void {
  const stated = photos
    .map(({ sha256 = '', bytes = 0, mediaType = '', fileName = '' }) => ({
      sha256: typeof sha256 === 'string' ? sha256 : '',
      line: canonicalJson({ sha256, bytes, mediaType, fileName }),
    }))
    .sort((one, other) => (one.sha256 < other.sha256 ? -1 : 1));
  for (let i = 0; i < Math.max(originals.length, stated.length); i += 1) {
    const [listed, known] = [originals[i], stated[i]];
    if (listed && known && canonicalJson(listed) === known.line) continue;
    throw new Wrong('manifest-original', PLACE, { sha256: listed?.sha256 ?? known?.sha256 ?? '' });
  }
}
