import type { MediaType } from '#domain/contract/shapes';

/** Bytes from the start of a file that `sniff` wants to see. */
export const SNIFF_BYTES = 1024;

export type Sniffed =
  | { readonly kind: 'photo'; readonly mediaType: MediaType }
  /** An image of a kind that is not taken; `found` is its usual name. */
  | { readonly kind: 'other-image'; readonly found: string }
  | { readonly kind: 'no-image'; readonly found: string };

type Signature = readonly [bytes: string, sniffed: Sniffed];

const photo = (mediaType: MediaType): Sniffed => ({ kind: 'photo', mediaType });
const image = (found: string): Sniffed => ({ kind: 'other-image', found });
const noImage = (found: string): Sniffed => ({ kind: 'no-image', found });

/** First bytes as latin-1 text. Sources: the format specifications (JPEG T.81, PNG, TIFF 6.0, BMFF 14496-12, …). */
const SIGNATURES: readonly Signature[] = [
  ['\xff\xd8\xff', photo('image/jpeg')],
  ['\x89PNG\r\n\x1a\n', photo('image/png')],
  ['II*\0', photo('image/tiff')],
  ['MM\0*', photo('image/tiff')],
  ['II+\0', photo('image/tiff')],
  ['MM\0+', photo('image/tiff')],
  ['GIF87a', image('GIF')],
  ['GIF89a', image('GIF')],
  ['BM', image('BMP')],
  ['8BPS', image('PSD')],
  ['\0\0\x01\0', image('ICO')],
  ['\xff\x4f\xff\x51', image('JPEG 2000')],
  ['\0\0\0\x0cjP  ', image('JPEG 2000')],
  ['\xff\x0a', image('JPEG XL')],
  ['\0\0\0\x0cJXL ', image('JPEG XL')],
  ['%PDF-', noImage('PDF')],
  ['PK\x03\x04', noImage('ZIP')],
  ['Rar!', noImage('RAR')],
  ['7z\xbc\xaf', noImage('7-Zip')],
  ['\x1f\x8b', noImage('gzip')],
  ['\x1aE\xdf\xa3', noImage('Matroska')],
  ['ID3', noImage('MP3')],
  ['OggS', noImage('Ogg')],
  ['\x7fELF', noImage('ELF')],
  ['MZ', noImage('EXE')],
];

/** What a file is by its content, whatever its name says. `head` are its first bytes, at best SNIFF_BYTES of them. */
export function sniff(head: Uint8Array): Sniffed {
  const text = Buffer.from(head.subarray(0, SNIFF_BYTES)).toString('latin1');
  const signature = SIGNATURES.find(([bytes]) => text.startsWith(bytes));
  if (signature) return signature[1];
  return sniffRiff(text) ?? sniffBoxes(head, text) ?? sniffMarkup(text) ?? sniffText(head);
}

function sniffRiff(text: string): Sniffed | null {
  if (!text.startsWith('RIFF')) return null;
  const form = text.slice(8, 12);
  if (form === 'WEBP') return photo('image/webp');
  return noImage(form === 'WAVE' ? 'WAV' : form === 'AVI ' ? 'AVI' : 'RIFF');
}

const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx'];
const AVIF_BRANDS = ['avif', 'avis'];

/** ISO base media files name their kind in the brands of the ftyp box; 'mif1' alone says only HEIF. */
function sniffBoxes(head: Uint8Array, text: string): Sniffed | null {
  if (text.slice(4, 8) !== 'ftyp') return null;
  const size = Math.min(Buffer.from(head.subarray(0, 4)).readUInt32BE(), text.length);
  const brands = [text.slice(8, 12)];
  for (let at = 16; at + 4 <= size; at += 4) brands.push(text.slice(at, at + 4));
  const first = brands.find((brand) => HEIC_BRANDS.includes(brand) || AVIF_BRANDS.includes(brand));
  if (first) return photo(AVIF_BRANDS.includes(first) ? 'image/avif' : 'image/heic');
  if (brands.includes('mif1') || brands.includes('msf1')) return photo('image/heic');
  if (brands.includes('crx ')) return image('CR3');
  return noImage(brands[0] === 'qt  ' ? 'QuickTime' : 'MP4');
}

function sniffMarkup(text: string): Sniffed | null {
  const start = text.replace(/^(\xef\xbb\xbf)?\s*/u, '').toLowerCase();
  if (!start.startsWith('<')) return null;
  if (/<svg[\s>]|<!doctype svg/u.test(start)) return image('SVG');
  if (/^<!doctype html|<(html|head|body|script)[\s>]/u.test(start)) return noImage('HTML');
  return noImage('XML');
}

function sniffText(head: Uint8Array): Sniffed {
  const sample = head.subarray(0, SNIFF_BYTES);
  const isText = sample.length > 1 && sample.every((b) => b >= 0x20 || b === 9 || b === 10 || b === 13);
  return noImage(isText && sample.every((b) => b !== 0xff && b !== 0xfe && b !== 0x7f) ? 'text' : 'data');
}
