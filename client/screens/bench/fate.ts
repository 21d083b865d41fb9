import type { Pause, Unsent } from './outbox.ts';

/** What has become of a statement: only 'accepted' is the server's own word. */
export type Fate = 'accepted' | 'on-its-way' | 'refused' | 'gone' | Pause;

/** `onRecord`: the tags that the server has. A statement that is nowhere was dropped by hand. */
export function fateOf(
  tag: string,
  onRecord: readonly { readonly id: string }[],
  unsent: readonly Unsent[],
  pause: Pause | null,
): Fate {
  if (onRecord.some(({ id }) => id === tag)) return 'accepted';
  const entry = unsent.find(({ write }) => write.is !== 'withdraw' && write.tag === tag);
  if (!entry) return 'gone';
  if (entry.refused !== null) return 'refused';
  return pause ?? 'on-its-way';
}
