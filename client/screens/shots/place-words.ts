import type { LookView, ShotListView, ShotPlaceView } from '#domain/contract/shot-views';
import type { Words } from '../../i18n/words.ts';

type Grid = NonNullable<ShotListView['grid']>;

/** A label that says 通り itself is not told so twice. */
const bare = (label: string) => label.replace(/通り?$/u, '');

/** Where somebody stands, by marks and lines. */
export function whereWords(t: Words, { before, between: [from, to] }: ShotPlaceView, grid: Grid): string {
  if (!before) return t('shots.where.room', { from, to });
  const line = bare(before.line);
  if (before.outside) return t('shots.where.outside', { line, from, to });
  const { lines } = grid[before.family];
  const at = lines.findIndex(({ label }) => label === before.line);
  const beside = bare(lines[before.side === 'lower' ? at - 1 : at + 1]?.label ?? before.line);
  return t('shots.where.wall', { line, from, to, beside });
}

export function lookWords(t: Words, look: LookView): string {
  if (typeof look === 'string') return t(`shots.look.${look}`);
  return t('shots.look.line', { line: bare(look.line) });
}
