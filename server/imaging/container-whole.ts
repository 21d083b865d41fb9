import { open, type FileHandle } from 'node:fs/promises';
import type { MediaType } from '#domain/contract/shapes';

const MAX_BOXES = 10_000;

/** Whether a file is as long as its own headers say. WebP: the RIFF length; HEIF: the chain of top-level boxes (ISO 14496-12 §4.2). */
export async function isContainerWhole(path: string, mediaType: MediaType): Promise<boolean> {
  const file = await open(path, 'r');
  try {
    const { size } = await file.stat();
    return await (mediaType === 'image/webp' ? isRiffWhole(file, size) : isBoxChainWhole(file, size));
  } finally {
    await file.close();
  }
}

async function isRiffWhole(file: FileHandle, size: number): Promise<boolean> {
  const header = await readAt(file, 0, 8);
  return header.length === 8 && header.readUInt32LE(4) + 8 <= size;
}

async function isBoxChainWhole(file: FileHandle, size: number): Promise<boolean> {
  let at = 0;
  for (let count = 0; count < MAX_BOXES && at < size; count += 1) {
    const header = await readAt(file, at, 16);
    if (header.length < 8) return false;
    const short = header.readUInt32BE(0);
    // 0: to the end of the file; 1: a 64-bit length follows.
    if (short === 0) return true;
    if (short === 1 && header.length < 16) return false;
    const length = short === 1 ? Number(header.readBigUInt64BE(8)) : short;
    if (length < 8) return false;
    at += length;
  }
  return at === size;
}

async function readAt(file: FileHandle, position: number, length: number): Promise<Buffer> {
  const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, position);
  return buffer.subarray(0, bytesRead);
}
