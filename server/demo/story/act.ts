import type { TagFacts } from '#domain/contract/shapes';
import type { Who } from './people.ts';

interface Told {
  /** When it is said, as the ledger writes it. */
  readonly at: string;
  readonly by: Who;
}

/** Something that somebody does in the record: in words of the public API, and nothing else. */
export type Act = Told &
  (
    | {
        readonly does: 'say';
        readonly method: 'POST' | 'PUT';
        readonly path: string;
        readonly body: unknown;
      }
    | { readonly does: 'hand-in-schedule'; readonly text: string }
    | { readonly does: 'join' }
    | { readonly does: 'add-photo'; readonly photo: string; readonly fileName: string }
    | { readonly does: 'tag'; readonly photo: string; readonly tag: Tag }
    | { readonly does: 'say-of-photo'; readonly photo: string; readonly path: string; readonly body: unknown }
    | { readonly does: 'release'; readonly covering: string; readonly release: Release }
  );

export type ActOf<Does extends Act['does']> = Extract<Act, { readonly does: Does }>;

/** As it is sent; `mark` is in its normal form. */
export type Tag = { readonly id: string } & Pick<TagFacts, 'stage' | 'region' | 'stretch'> & {
    readonly mark: string;
  };

export interface Release {
  readonly id: string;
  readonly note: string;
  /** Why what has no record may go all the same. */
  readonly waived: string;
}

/** A house and all that was done in its record, in order. */
export interface Story {
  readonly house: string;
  readonly acts: readonly Act[];
}
