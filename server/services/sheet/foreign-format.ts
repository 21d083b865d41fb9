import type { SheetRefusal } from '#domain/frame/sheet-refusal';

/** Signatures: PKWARE APPNOTE 4.3.7 (ZIP), [MS-CFB] 2.2 (compound file of old Office), ISO 32000 7.5.2 (PDF). */
const ZIP = [0x50, 0x4b];
const COMPOUND_FILE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const PDF = [0x25, 0x50, 0x44, 0x46, 0x2d];

export function isZip(bytes: Uint8Array): boolean {
  return begins(bytes, ZIP) && (bytes[2] ?? 255) < 9 && (bytes[3] ?? 255) < 9;
}

/** The name of a format that is known and not read, or null. */
export function foreignFormat(bytes: Uint8Array): SheetRefusal | null {
  if (begins(bytes, PDF)) return 'pdf';
  if (!begins(bytes, COMPOUND_FILE)) return null;
  return hasUtf16Name(bytes, 'EncryptedPackage') ? 'locked' : 'old-excel';
}

function begins(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, i) => bytes[i] === byte);
}

/** Names of streams in a compound file are UTF-16LE ([MS-CFB] 2.6.1); a locked workbook has an EncryptedPackage ([MS-OFFCRYPTO] 2.3.4). */
function hasUtf16Name(bytes: Uint8Array, name: string): boolean {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(Buffer.from(name, 'utf16le'));
}
