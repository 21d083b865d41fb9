import type { TagFactsInput, TagWrite } from '../../outbox/outbox.ts';

/**
 * What was said at this photo, to be taken back and said again. Nothing on record is ever undone: each step
 * back is a statement of its own, and so is each step forth again.
 */
export type Deed =
  | { readonly is: 'place'; readonly tag: string; readonly facts: TagFactsInput }
  | { readonly is: 'withdraw'; readonly tag: string; readonly facts: TagFactsInput }
  | {
      readonly is: 'supersede';
      readonly tag: string;
      readonly old: string;
      readonly facts: TagFactsInput;
      readonly before: TagFactsInput;
    };

export interface Deeds {
  readonly past: readonly Deed[];
  readonly future: readonly Deed[];
}

export const NO_DEEDS: Deeds = { past: [], future: [] };

/** How a tag stands; undefined where nobody has heard of it, or it was refused. */
export type Standing = (tag: string) => 'standing' | 'superseded' | 'withdrawn' | undefined;

export const withDeed = ({ past }: Deeds, deed: Deed): Deeds => ({ past: [...past, deed], future: [] });

export interface Reversal {
  readonly write: TagWrite;
  readonly deeds: Deeds;
}

/** Takes the last deed back that can still be taken back; null where there is none. */
export function takeBack(
  deeds: Deeds,
  standing: Standing,
  newId: () => string,
  reason: string,
): Reversal | null {
  const found = lastThatStands(deeds.past, standing);
  if (!found) return null;
  const { write, deed, renamed } = reverse(found.deed, newId(), reason);
  const follow = renaming(renamed);
  return {
    write,
    deeds: { past: found.earlier.map(follow), future: [...deeds.future.map(follow), deed] },
  };
}

/** Says again what was taken back last. */
export function sayAgain(
  deeds: Deeds,
  standing: Standing,
  newId: () => string,
  reason: string,
): Reversal | null {
  const turned = takeBack({ past: deeds.future, future: deeds.past }, standing, newId, reason);
  return turned && { write: turned.write, deeds: { past: turned.deeds.future, future: turned.deeds.past } };
}

/** Somebody else may have withdrawn or changed the tag since, or the server may have refused it. */
function lastThatStands(
  past: readonly Deed[],
  standing: Standing,
): { deed: Deed; earlier: readonly Deed[] } | null {
  const i = past.findLastIndex(
    (deed) => standing(deed.tag) === (deed.is === 'withdraw' ? 'withdrawn' : 'standing'),
  );
  const deed = past[i];
  return deed ? { deed, earlier: past.slice(0, i) } : null;
}

interface Reversed {
  readonly write: TagWrite;
  /** What was done by it, to be reversed in its turn. */
  readonly deed: Deed;
  /** The tag that now stands in for another one. */
  readonly renamed: readonly [old: string, now: string] | null;
}

function reverse(done: Deed, id: string, reason: string): Reversed {
  const { tag, facts } = done;
  switch (done.is) {
    case 'place':
      return {
        write: { is: 'withdraw', tag, reason, facts },
        deed: { is: 'withdraw', tag, facts },
        renamed: null,
      };
    case 'withdraw':
      return {
        write: { is: 'place', tag: id, facts },
        deed: { is: 'place', tag: id, facts },
        renamed: [tag, id],
      };
    case 'supersede':
      return {
        write: { is: 'supersede', tag: id, old: tag, facts: done.before },
        deed: { is: 'supersede', tag: id, old: tag, facts: done.before, before: facts },
        renamed: [done.old, id],
      };
  }
}

const renaming = (renamed: Reversed['renamed']) => (deed: Deed) =>
  renamed?.[0] === deed.tag ? { ...deed, tag: renamed[1] } : deed;
