import ExifReader from 'exifreader';
import { TAG, type ExifBlocks } from './exif-blocks.ts';

/** Only what the first reader reads too: neither makers' notes nor thumbnails of a hostile file are looked at. */
const POINTERS = [0x8769, 0x8825];
const OPTIONS = { expanded: true as const, includeTags: { exif: [...Object.values(TAG), ...POINTERS] } };
const IFD0: readonly number[] = [TAG.make, TAG.model, TAG.orientation, TAG.modified];
/** Fractions arrive as [over, under]. */
const FRACTIONS: readonly number[] = [TAG.focalLength, TAG.altitude, TAG.heading, TAG.positionError];

/** What the library says where a value lies outside the file. */
const FAULTY = '<faulty value>';

/**
 * The same bytes through another library, as the same blocks. Never throws; null where it finds nothing. What
 * the two read differently is nobody's to decide by chance.
 */
export function parseExifAgain(bytes: Uint8Array): ExifBlocks | null {
  const blocks = { ifd0: new Map(), exif: new Map(), gps: new Map(), broken: false };
  for (const [name, tag] of Object.entries(load(bytes))) {
    const { id, value } = tag as { id?: unknown; value?: unknown };
    if (typeof id !== 'number' || value === undefined) continue;
    // Interoperability tags have the numbers of GPS tags.
    const block = name.startsWith('GPS') ? 'gps' : id < 0x100 ? null : IFD0.includes(id) ? 'ifd0' : 'exif';
    const read = plain(id, value);
    if (block && read !== FAULTY) blocks[block].set(id, read);
  }
  return blocks.ifd0.size + blocks.exif.size + blocks.gps.size > 0 ? blocks : null;
}

function load(bytes: Uint8Array): object {
  try {
    return ExifReader.load(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length), OPTIONS).exif ?? {};
  } catch {
    return {};
  }
}

function plain(id: number, value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  const list: unknown[] = value;
  if (FRACTIONS.includes(id)) return quotient(list);
  if (list.every(Array.isArray)) return list.map((part) => quotient(part as unknown[]));
  return list.length === 1 ? list[0] : list;
}

function quotient([over, under]: readonly unknown[]): unknown {
  return typeof over === 'number' && typeof under === 'number' ? over / under : undefined;
}
