import type { Region, UnitBox } from '#domain/photo/region';
import type { MediaType, Readings } from '#domain/contract/shapes';
import type { LegibilityMeasures } from '#domain/photo/legibility';
import type { ProblemCode } from '#domain/contract/problems';
import type { Sheet, SheetRecord } from '#domain/record/sheet/sheet';
import type { Writable } from 'node:stream';

/** What the services need from image files; server/imaging implements it. */

export interface Inspection {
  readonly ok: true;
  readonly mediaType: MediaType;
  /** Pixels of the upright image. */
  readonly width: number;
  readonly height: number;
  readonly readings: Readings;
}

export interface Refusal {
  readonly ok: false;
  readonly code: ProblemCode;
  readonly params: Record<string, string | number>;
}

export type PictureState = 'ready' | 'damaged' | 'unreadable';

/** All that a copy to hand on may say of itself. */
export type CopyFacts = Pick<
  Readings,
  | 'wallTime'
  | 'offsetMinutes'
  | 'position'
  | 'heading'
  | 'make'
  | 'model'
  | 'serial'
  | 'lens'
  | 'focalLengthMm'
  | 'focalLength35Mm'
>;
/** What is known of a whole picture, to find others like it and the sharpest of them. */
export interface PictureTraits {
  /** Difference hash: 64 bits as 16 hex digits. */
  readonly hash: string;
  /** Comparable between pictures of one scene only. */
  readonly sharpness: number;
}

export interface MadePictures {
  readonly state: PictureState;
  /** null where there is no picture. */
  readonly traits: PictureTraits | null;
}

export interface Imaging {
  /** Looks at a file that lies complete on disk: true type by content, size in pixels, what is written in it. Never throws for bad content. */
  inspect(path: string): Promise<Inspection | Refusal>;
  /** Writes thumbnail (320 px) and preview (1600 px), both JPEG, upright, each by a temporary name and rename. */
  makePictures(
    original: string,
    mediaType: MediaType,
    to: { thumb: string; preview: string },
  ): Promise<MadePictures>;
  /** Of a preview that was made before. Rejects where it cannot be read. */
  traits(preview: string): Promise<PictureTraits>;
  /** A part of the upright original as JPEG, at most `width` px wide, with the region's outline drawn when given. */
  crop(
    original: string,
    mediaType: MediaType,
    box: UnitBox,
    width: number,
    outline?: Region,
  ): Promise<Uint8Array>;
  /** One for each region, or null where the original cannot be decoded. */
  measure(
    original: string,
    mediaType: MediaType,
    regions: readonly Region[],
  ): Promise<LegibilityMeasures[] | null>;
  /**
   * Writes the whole upright original as JPEG with nothing written in it, unless it is there already.
   * By temporary name and rename, and once for all who ask at the same time.
   */
  makeWhole(original: string, mediaType: MediaType, to: string): Promise<void>;
  /** The whole upright original as JPEG that holds exactly `facts`. Never in the way of `makeWhole`. */
  copy(original: string, mediaType: MediaType, facts: CopyFacts): Promise<Uint8Array>;
  close(): Promise<void>;
}

export interface PaperPicture {
  readonly jpeg: Uint8Array;
  /** Width by height. */
  readonly aspect: number;
}

export interface PaperWish {
  readonly sheet: Sheet;
  readonly lang: 'en' | 'ja';
  /** Address that the code on it holds. */
  readonly check: string;
  /** When it is made. */
  readonly at: Date;
  /** What a record shows; null where there is none to be had. Asked for one after the other. */
  readonly picture: (record: SheetRecord) => Promise<PaperPicture | null>;
}

/** server/paper implements it. */
export interface Paper {
  /** Writes the sheet as a PDF on A4, no faster than it is taken, and ends `to`. Rejects where `to` closes before. */
  writeRelease(wish: PaperWish, to: Writable): Promise<void>;
}
