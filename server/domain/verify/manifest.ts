import { canonicalJson } from '../ledger/canonical-json.ts';
import { canonicalValue, strictText } from './canonical-value.ts';
import { FieldMissing, Fields, type JsonObject } from './fields.ts';
import { MANIFEST } from './file-names.ts';
import { HEX_HASH, toHex, type Hashing } from './hashing.ts';
import { Wrong } from './wrong.ts';

export const FORMAT = 'arakabe-archive';
export const FORMAT_VERSION = 1;

export interface NamedHash {
  readonly name: string;
  readonly sha256: string;
}

export interface ManifestOriginal {
  readonly sha256: string;
  readonly bytes: number;
  readonly mediaType: string;
  readonly fileName: string;
}

export interface Manifest {
  readonly house: string;
  readonly size: number;
  readonly head: string;
  readonly madeAt: string;
  readonly originals: readonly ManifestOriginal[];
  readonly pages: readonly NamedHash[];
  readonly tables: readonly NamedHash[];
}

const PLACE = { file: MANIFEST };

/** Reads the manifest and checks all that it says of itself. Throws Wrong. */
export function parseManifest(hashing: Hashing, bytes: Uint8Array): Manifest {
  const value = canonicalValue(strictText(bytes, PLACE), PLACE);
  try {
    const fields = new Fields(value, 'format');
    assertKnown(fields);
    assertChecksum(hashing, value as JsonObject, fields.text('checksum', HEX_HASH));
    return {
      house: fields.text('house'),
      size: fields.count('size'),
      head: fields.text('head', HEX_HASH),
      madeAt: fields.instant('madeAt'),
      originals: fields.objects('originals').map(readOriginal),
      pages: fields.objects('pages').map(readNamedHash),
      tables: fields.objects('tables').map(readNamedHash),
    };
  } catch (error) {
    if (error instanceof FieldMissing) throw new Wrong('manifest-form', PLACE, { field: error.field });
    throw error;
  }
}

/**
 * SHA-256 of the canonical manifest without the checksum itself. It vouches for nothing, since whoever alters one can
 * alter the other: it finds a byte that went wrong where nothing else speaks of it, such as the time of making.
 */
export function manifestChecksum(hashing: Hashing, manifest: JsonObject): string {
  const { checksum: _, ...rest } = manifest;
  return toHex(hashing.digest(new TextEncoder().encode(canonicalJson(rest))));
}

function assertChecksum(hashing: Hashing, value: JsonObject, found: string): void {
  if (manifestChecksum(hashing, value) !== found) throw new Wrong('manifest-checksum', PLACE);
}

function assertKnown(fields: Fields): void {
  const format = fields.text('format');
  const version = fields.count('version');
  if (format !== FORMAT) throw new Wrong('manifest-newer', PLACE, { field: 'format', found: format });
  if (version !== FORMAT_VERSION)
    throw new Wrong('manifest-newer', PLACE, { field: 'version', found: version });
}

function readOriginal(fields: Fields): ManifestOriginal {
  return {
    sha256: fields.text('sha256', HEX_HASH),
    bytes: fields.count('bytes'),
    mediaType: fields.text('mediaType'),
    fileName: fields.text('fileName'),
  };
}

function readNamedHash(fields: Fields): NamedHash {
  return { name: fields.text('name'), sha256: fields.text('sha256', HEX_HASH) };
}
