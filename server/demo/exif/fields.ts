/** A text of an Exif segment that does not fit into its entry itself. */
export interface Field {
  readonly folder: 'image' | 'exif' | 'gps';
  readonly tag: number;
  /** Bytes, with the zero at its end. */
  readonly count: number;
  /** Where its value begins in the file. */
  readonly at: number;
}

const APP1 = 0xe1;
const START_OF_SCAN = 0xda;
const HEADING = 'Exif\0\0';
const ASCII = 2;
const ENTRY_BYTES = 12;
/** Entries that lead to another folder. */
const POINTERS = { 0x8769: 'exif', 0x8825: 'gps' } as const satisfies Record<number, Field['folder']>;

/** The texts of a JPEG's Exif segments (TIFF 6.0 §2, Exif 2.32 §4.5); none where there is no such segment. */
export function fieldsOf(jpeg: Uint8Array): Field[] {
  const file = new DataView(jpeg.buffer, jpeg.byteOffset, jpeg.byteLength);
  return segmentsOf(file).flatMap(([from, to]) => {
    const text = String.fromCharCode(...jpeg.subarray(from, from + HEADING.length));
    return text === HEADING && to - from > HEADING.length
      ? fieldsIn(new Tiff(file, from + HEADING.length, to))
      : [];
  });
}

/** Where the contents of APP1 segments begin and end. */
function segmentsOf(file: DataView): (readonly [from: number, to: number])[] {
  const found: (readonly [number, number])[] = [];
  for (let at = 2; at + 4 <= file.byteLength;) {
    const marker = file.getUint8(at + 1);
    if (file.getUint8(at) !== 0xff || marker === START_OF_SCAN) break;
    const end = at + 2 + file.getUint16(at + 2);
    if (marker === APP1) found.push([at + 4, Math.min(end, file.byteLength)]);
    at = end;
  }
  return found;
}

/** A TIFF structure within a file: what would be read beyond its end is not there. */
class Tiff {
  readonly #isLittle: boolean;

  constructor(
    private readonly file: DataView,
    readonly start: number,
    private readonly end: number,
  ) {
    this.#isLittle = file.getUint8(start) === 0x49;
  }

  short(at: number): number {
    return this.holds(at, 2) ? this.file.getUint16(this.start + at, this.#isLittle) : 0;
  }

  long(at: number): number {
    return this.holds(at, 4) ? this.file.getUint32(this.start + at, this.#isLittle) : 0;
  }

  holds(at: number, bytes: number): boolean {
    return this.start + at + bytes <= this.end;
  }
}

function fieldsIn(tiff: Tiff): Field[] {
  const fields: Field[] = [];
  const waiting: { folder: Field['folder']; at: number }[] = [{ folder: 'image', at: tiff.long(4) }];
  const read = new Set<number>();
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { folder, at } = next;
    // No folder lies at 0, and one that leads back to itself is read once.
    if (at === 0 || read.has(at)) continue;
    read.add(at);
    const entries = Array.from({ length: tiff.short(at) }, (_, i) => at + 2 + i * ENTRY_BYTES);
    for (const entry of entries) {
      const [tag, value] = [tiff.short(entry), tiff.long(entry + 8)];
      const leadsTo = (POINTERS as Record<number, Field['folder'] | undefined>)[tag];
      if (leadsTo) waiting.push({ folder: leadsTo, at: value });
      else if (tiff.short(entry + 2) === ASCII) {
        const count = tiff.long(entry + 4);
        if (count > 4 && tiff.holds(value, count))
          fields.push({ folder, tag, count, at: tiff.start + value });
      }
    }
    if (folder === 'image') waiting.push({ folder, at: tiff.long(at + 2 + entries.length * ENTRY_BYTES) });
  }
  return fields;
}
