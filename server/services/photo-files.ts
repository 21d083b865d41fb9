import type { Readable } from 'node:stream';

/** A file that has come in whole and lies on disk under a temporary name. */
export interface Incoming {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
  readonly tooLarge: boolean;
}

export type PictureSize = 'thumb' | 'preview' | 'whole';

/** Where originals and what is made of them lie; server/storage implements it. */
export interface PhotoFiles {
  receive(source: Readable, limit: number): Promise<Incoming>;
  /** Gives the file its name by content, for good. */
  keep(incoming: Incoming): Promise<void>;
  discard(incoming: Incoming): Promise<void>;
  original(sha256: string): string;
  /** How many bytes the original has on disk; null where it is not there. */
  originalBytes(sha256: string): Promise<number | null>;
  /** The content piece by piece, read no further than it is asked for; the file is closed when the reading ends. */
  readOriginal(sha256: string): AsyncIterable<Uint8Array>;
  picture(sha256: string, size: PictureSize): string;
  prepareForPictures(sha256: string): Promise<void>;
  freeBytes(): Promise<number>;
}
