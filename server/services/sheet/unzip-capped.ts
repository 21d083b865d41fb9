import { crc32, inflateRawSync } from 'node:zlib';
import { SHEET_LIMITS, SheetProblem } from './sheet-limits.ts';

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packed: Uint8Array;
}

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;

/**
 * The files of a ZIP archive whose names are wanted, inflated to no more than `limit` bytes in all.
 * Sizes written in the archive are not believed: inflating stops at the limit itself. Source: PKWARE
 * APPNOTE 4.3 and 4.4; ZIP64 and encryption are refused, sheets of this size need neither.
 */
export function unzipCapped(
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
  limit: number,
): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  let left = limit;
  for (const entry of readDirectory(bytes)) {
    if (!wanted(entry.name) || files.has(entry.name)) continue;
    const content = inflate(entry, left);
    if (crc32(content) !== entry.crc) throw new SheetProblem('damaged');
    left -= content.length;
    files.set(entry.name, content);
  }
  return files;
}

export function zipNames(bytes: Uint8Array): string[] {
  return readDirectory(bytes).map((entry) => entry.name);
}

function inflate({ method, packed }: Entry, limit: number): Uint8Array {
  if (method === 0) {
    if (packed.length > limit) throw tooLarge();
    return packed;
  }
  if (method !== 8) throw new SheetProblem('damaged');
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, limit) });
  } catch (error) {
    // zlib says ERR_BUFFER_TOO_LARGE, a RangeError, as soon as the limit is passed.
    throw error instanceof RangeError ? tooLarge() : new SheetProblem('damaged');
  }
}

function tooLarge(): SheetProblem {
  return new SheetProblem('too-large', { limit: SHEET_LIMITS.inflatedBytes / 1_000_000 });
}

function readDirectory(bytes: Uint8Array): Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  try {
    const end = findEnd(view);
    const count = view.getUint16(end + 10, true);
    const entries: Entry[] = [];
    let at = view.getUint32(end + 16, true);
    for (let i = 0; i < count; i += 1) {
      const { entry, next } = readEntry(view, at);
      entries.push(entry);
      at = next;
    }
    return entries;
  } catch (error) {
    // A DataView throws RangeError where the directory points outside the file.
    if (error instanceof RangeError) throw new SheetProblem('damaged');
    throw error;
  }
}

function findEnd(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1)
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  throw new SheetProblem('damaged');
}

function readEntry(view: DataView, at: number): { entry: Entry; next: number } {
  if (view.getUint32(at, true) !== DIRECTORY_ENTRY) throw new SheetProblem('damaged');
  const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
  const packedLength = view.getUint32(at + 20, true);
  const nameLength = view.getUint16(at + 28, true);
  const extras = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  const local = view.getUint32(at + 42, true);
  if (flags & 1) throw new SheetProblem('locked');
  if (view.getUint32(local, true) !== LOCAL_ENTRY) throw new SheetProblem('damaged');
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  return {
    entry: {
      name: new TextDecoder().decode(part(view, at + 46, nameLength)),
      method,
      crc: view.getUint32(at + 16, true),
      packed: part(view, start, packedLength),
    },
    next: at + 46 + nameLength + extras,
  };
}

function part(view: DataView, start: number, length: number): Uint8Array {
  if (start + length > view.byteLength) throw new SheetProblem('damaged');
  return new Uint8Array(view.buffer as ArrayBuffer, view.byteOffset + start, length);
}
