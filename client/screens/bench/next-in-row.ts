import type { Stage } from '#domain/frame/stage';
import type { Desk, Entry } from './desk-state.ts';

/** What a fresh drawing is placed as without being asked; null where it is a change, was split, or no next is known. */
export function nextInRow({ bench: { work }, fresh }: Desk): (Entry & { stage: Stage }) | null {
  const { draft, waiting } = work;
  const { mark, stage } = fresh;
  if (draft?.replaces !== null || waiting.length > 0 || mark === '' || stage === null) return null;
  return { mark, stage, note: '' };
}
