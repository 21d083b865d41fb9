import { createRequire } from 'node:module';

interface Pixels {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

interface HeifImage {
  get_width(): number;
  get_height(): number;
  is_primary(): boolean;
  /** Decodes into `target.data`, RGBA with 8 bits, turned upright as the file says; null on failure. */
  display(target: Pixels, done: (result: Pixels | null) => void): void;
  free(): void;
}

/** The part of libheif-js that is used here. The package is CommonJS and carries no types for its bundled entry. */
interface Libheif {
  readonly HeifDecoder: new () => { decode(file: Uint8Array): HeifImage[] };
}

export const libheif = createRequire(import.meta.url)('libheif-js/wasm-bundle') as Libheif;
