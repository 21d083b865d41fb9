import type { Stage, Track } from '#domain/frame/stage';
import type { Kind } from '#domain/lexicon/kind';
import { COVERING_FORMS, type CoveringForm } from '#domain/record/covering-form';
import { defaultLeast } from '#domain/record/default-least';
import type { StatedRequirement } from '#domain/record/requirements-of';

/** What a form of covering asks of a kind, as the house states it or as is common. */
export interface Need extends StatedRequirement {
  /** null: a kind that the crew has removed from its words. */
  readonly known: Kind | null;
  /** Whether the house states it otherwise than is common. */
  readonly isOwn: boolean;
}

/** The kinds that a form commonly hides and those of which the house says something, in the lexicon's order. */
export function needsUnder(
  form: CoveringForm,
  kinds: readonly Kind[],
  stated: readonly StatedRequirement[],
): Need[] {
  const own = new Map(stated.filter((row) => row.form === form).map((row) => [row.kind, row]));
  const known = kinds.flatMap((kind): Need[] => {
    const row = own.get(kind.id);
    own.delete(kind.id);
    if (row) return [{ ...row, known: kind, isOwn: true }];
    return kind.hiddenBy.includes(form) ? [{ ...common(form, kind), known: kind, isOwn: false }] : [];
  });
  return [...known, ...[...own.values()].map((row) => ({ ...row, known: null, isOwn: true }))];
}

export function common(form: CoveringForm, { id, hiddenBy }: Kind): StatedRequirement {
  return { form, kind: id, hides: hiddenBy.includes(form), least: null, views: 1 };
}

/** States a row; one that says what is common is not stated. */
export function withNeed(stated: readonly StatedRequirement[], need: Need): StatedRequirement[] {
  const { form, kind, hides, least, views, known } = need;
  const others = withoutNeed(stated, need);
  const usual = known && common(form, known);
  // Of what stays visible nothing is asked.
  const row = hides ? { form, kind, hides, least, views } : { form, kind, hides, least: null, views: 1 };
  return usual && isSame(usual, row) ? others : [...others, row];
}

export function withoutNeed(
  stated: readonly StatedRequirement[],
  { form, kind }: Pick<Need, 'form' | 'kind'>,
): StatedRequirement[] {
  return stated.filter((row) => row.form !== form || row.kind !== kind);
}

const isSame = (a: StatedRequirement, b: StatedRequirement) =>
  a.hides === b.hides && a.least === b.least && a.views === b.views;

/** Whether two tables say the same, in whatever order. */
export function isSameTable(a: readonly StatedRequirement[], b: readonly StatedRequirement[]): boolean {
  const sorted = (rows: readonly StatedRequirement[]) =>
    rows
      .map(({ form, kind, hides, least, views }) => JSON.stringify([form, kind, hides, least, views]))
      .sort();
  return JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));
}

/** The stage that is asked for where nothing is stated. */
export function usualLeast(form: CoveringForm, track: Track): Stage {
  return defaultLeast(
    form === 'plaster-between-posts' || form === 'plaster-over-posts' ? 'plaster' : form,
    track,
  );
}

export { COVERING_FORMS };
