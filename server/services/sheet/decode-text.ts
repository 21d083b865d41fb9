export type TextEncoding = 'utf-8' | 'shift_jis' | 'utf-16le' | 'utf-16be';

const BYTE_ORDER_MARKS: readonly (readonly [TextEncoding, ...number[]])[] = [
  ['utf-8', 0xef, 0xbb, 0xbf],
  ['utf-16le', 0xff, 0xfe],
  ['utf-16be', 0xfe, 0xff],
];

/**
 * Text of a CSV file: a byte order mark decides; else the charset of its content type; else UTF-8 where
 * every byte fits it; else Shift_JIS, which Japanese Excel writes (WHATWG: windows-31j). Shift_JIS text
 * with kanji is practically never valid UTF-8. Null where nothing fits.
 */
export function decodeText(
  bytes: Uint8Array,
  contentType: string,
): { text: string; encoding: TextEncoding } | null {
  const marked = BYTE_ORDER_MARKS.find(([, ...mark]) => mark.every((byte, i) => bytes[i] === byte));
  const announced = announcedEncoding(contentType);
  const candidates: TextEncoding[] = marked
    ? [marked[0]]
    : [...(announced ? [announced] : []), 'utf-8', 'shift_jis'];
  for (const encoding of candidates) {
    const text = decodeStrictly(bytes, encoding);
    if (text !== null) return { text, encoding };
  }
  return null;
}

/** TextDecoder drops the byte order mark itself. */
function decodeStrictly(bytes: Uint8Array, encoding: TextEncoding): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function announcedEncoding(contentType: string): TextEncoding | null {
  const label = /charset\s*=\s*"?([\w.:-]+)/iu.exec(contentType)?.[1]?.toLowerCase() ?? '';
  if (['utf-16le', 'utf-16be'].includes(label)) return label as TextEncoding;
  return ['shift_jis', 'shift-jis', 'sjis', 'windows-31j', 'cp932', 'ms932'].includes(label)
    ? 'shift_jis'
    : null;
}
