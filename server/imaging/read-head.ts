import { open } from 'node:fs/promises';

/** The first bytes of a file, at most `length` of them. */
export async function readHead(path: string, length: number): Promise<Buffer> {
  const file = await open(path, 'r');
  try {
    const { size } = await file.stat();
    const head = Buffer.alloc(Math.min(length, size));
    let filled = 0;
    while (filled < head.length) {
      const { bytesRead } = await file.read(head, filled, head.length - filled, filled);
      if (bytesRead === 0) break;
      filled += bytesRead;
    }
    return head.subarray(0, filled);
  } finally {
    await file.close();
  }
}
