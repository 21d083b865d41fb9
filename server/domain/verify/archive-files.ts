import { Wrong } from './wrong.ts';

/** An archive wherever it lies: a ZIP, a folder, something in memory. */
export interface ArchiveFiles {
  /** As they stand there, `/` between folders; one that stands there twice is named twice. */
  readonly files: readonly { readonly name: string; readonly bytes: number }[];
  /** The content piece by piece. Rejects where it cannot be read. */
  read(name: string): AsyncIterable<Uint8Array>;
}

/** Whatever an operating system leaves in a folder that somebody looked into. */
const LITTER = /(^|\/)(\.DS_Store|Thumbs\.db|desktop\.ini)$/;

export function isLitter(name: string): boolean {
  return LITTER.test(name);
}

/** Reads a file, with `progress` after each piece; a reason for not being read becomes what is wrong. */
export async function* pieces(
  archive: ArchiveFiles,
  file: string,
  progress: (bytes: number) => void = () => undefined,
): AsyncGenerator<Uint8Array> {
  try {
    for await (const piece of archive.read(file)) {
      progress(piece.length);
      yield piece;
    }
  } catch (error) {
    if (error instanceof Wrong) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    throw new Wrong('file-unreadable', { file }, { reason });
  }
}

/** A file that is small enough to be held whole. */
export async function readWhole(source: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const piece of source) parts.push(piece);
  return joinBytes(parts);
}

export function joinBytes(parts: readonly Uint8Array[]): Uint8Array {
  if (parts.length === 1) return parts[0] as Uint8Array;
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
