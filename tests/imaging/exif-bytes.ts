/** Builds Exif blocks with values that no well-behaved writer makes. Layout: TIFF 6.0 §2, little endian. */

export const TYPE = { ascii: 2, short: 3, long: 4, rational: 5, undefined: 7 } as const;

export interface Entry {
  readonly tag: number;
  readonly type: number;
  readonly count: number;
  readonly bytes: Uint8Array;
}

export const ascii = (tag: number, text: string): Entry => {
  const bytes = Buffer.from(`${text}\0`, 'utf8');
  return { tag, type: TYPE.ascii, count: bytes.length, bytes };
};

export const short = (tag: number, value: number): Entry => {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16LE(value);
  return { tag, type: TYPE.short, count: 1, bytes };
};

export const rationals = (tag: number, ...fractions: [number, number][]): Entry => {
  const bytes = Buffer.alloc(8 * fractions.length);
  fractions.forEach(([over, under], i) => {
    bytes.writeUInt32LE(over, 8 * i);
    bytes.writeUInt32LE(under, 8 * i + 4);
  });
  return { tag, type: TYPE.rational, count: fractions.length, bytes };
};

export interface Directories {
  readonly ifd0?: readonly Entry[];
  readonly exif?: readonly Entry[];
  readonly gps?: readonly Entry[];
}

/** A TIFF block with the three directories one after the other. */
export function tiffBlock({ ifd0 = [], exif = [], gps = [] }: Directories): Buffer {
  const head = Buffer.from('II*\0\x08\0\0\0', 'latin1');
  const pointer = (tag: number, to: number): Entry => {
    const bytes = Buffer.alloc(4);
    bytes.writeUInt32LE(to);
    return { tag, type: TYPE.long, count: 1, bytes };
  };
  const withPointers = (exifAt: number, gpsAt: number) => [
    ...ifd0,
    pointer(0x8769, exifAt),
    pointer(0x8825, gpsAt),
  ];
  const exifAt = 8 + directory(withPointers(0, 0), 8).length;
  const exifBytes = directory(exif, exifAt);
  const gpsAt = exifAt + exifBytes.length;
  return Buffer.concat([head, directory(withPointers(exifAt, gpsAt), 8), exifBytes, directory(gps, gpsAt)]);
}

function directory(entries: readonly Entry[], at: number): Buffer {
  const sorted = [...entries].sort((a, b) => a.tag - b.tag);
  const table = Buffer.alloc(2 + 12 * sorted.length + 4);
  table.writeUInt16LE(sorted.length);
  const values: Buffer[] = [];
  let valueAt = at + table.length;
  sorted.forEach((entry, i) => {
    const row = 2 + 12 * i;
    table.writeUInt16LE(entry.tag, row);
    table.writeUInt16LE(entry.type, row + 2);
    table.writeUInt32LE(entry.count, row + 4);
    if (entry.bytes.length <= 4) return void table.set(entry.bytes, row + 8);
    table.writeUInt32LE(valueAt, row + 8);
    values.push(Buffer.from(entry.bytes));
    valueAt += entry.bytes.length;
  });
  return Buffer.concat([table, ...values]);
}

/** Puts a block into a JPEG as its APP1 segment. */
export function intoJpeg(jpeg: Uint8Array, block: Uint8Array): Buffer {
  const length = Buffer.alloc(2);
  length.writeUInt16BE(block.length + 8);
  const segment = [Buffer.from([0xff, 0xe1]), length, Buffer.from('Exif\0\0', 'latin1'), block];
  return Buffer.concat([jpeg.subarray(0, 2), ...segment, jpeg.subarray(2)]);
}
