import type { PhotoFacts } from '../render/facts/photo-facts.ts';
import type { Kept } from '../render/truth/truth-file.ts';
import type { Who } from './people.ts';

export interface PhotoRow {
  /** Of its file, without ending. */
  readonly name: string;
  /** Of the shot that it shows: of several pictures of one shot the truth is the same. */
  readonly shot: string;
  /** As its device named it. */
  readonly fileName: string;
  /** On which it was taken, after the raising. */
  readonly day: number;
  /** When it truly was, by the clock on site: HH:MM:SS. */
  readonly time: string;
  readonly by: Who;
  /** A clock stands in it, by which its device can be put right. */
  readonly showsClock: boolean;
  /** Whether somebody has said yet what it shows. */
  readonly isTagged: boolean;
  /** What its file says. */
  readonly facts: PhotoFacts;
}

/** A photo as the story needs it: what is true of it is known, since it was computed. */
export interface StoryPhoto extends PhotoRow {
  readonly truth: Kept;
}
