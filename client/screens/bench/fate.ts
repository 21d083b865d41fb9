import type { TagView } from '#domain/contract/views';
import type { Pause, TagWrite, Unsent } from '../../outbox/outbox.ts';

/** What has become of a statement: only 'accepted' is the server's own word. */
export type Fate = 'accepted' | 'on-its-way' | 'refused' | 'gone' | Pause;

/** `onRecord`: the tags that the server has. A statement that is nowhere was dropped by hand. */
export function fateOf(
  { tag, is }: Pick<TagWrite, 'tag' | 'is'>,
  onRecord: readonly Pick<TagView, 'id' | 'state'>[],
  unsent: readonly Unsent[],
  pause: Pause | null,
): Fate {
  const isWithdrawal = is === 'withdraw';
  const isHeard = onRecord.some(({ id, state }) => id === tag && (!isWithdrawal || state === 'withdrawn'));
  if (isHeard) return 'accepted';
  const entry = unsent.find(({ write }) => write.tag === tag && (write.is === 'withdraw') === isWithdrawal);
  if (!entry) return 'gone';
  if (entry.refused !== null) return 'refused';
  return pause ?? 'on-its-way';
}
