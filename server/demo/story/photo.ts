import type { Truth } from '../render/truth/truth.ts';
import type { Who } from './people.ts';

export interface PhotoRow {
  /** Of its file, without ending. */
  readonly name: string;
  /** On which it was taken, after the raising. */
  readonly day: number;
  readonly by: Who;
  /** Whether somebody has said yet what it shows. */
  readonly isTagged: boolean;
}

/** A photo as the story needs it: what is true of it is known, since it was computed. */
export interface StoryPhoto extends PhotoRow {
  readonly truth: Truth;
}
