import { groupBy } from '#domain/group-by';
import type { CoveringLine } from './closing-preview.ts';

export interface WaivedTogether {
  readonly marks: readonly string[];
  /** Null where nobody is known by name. */
  readonly who: string | null;
  readonly reason: string;
}

/** What a release accepts without a record: members of which the same person said the same stand together. */
export function waivedByReason(lines: readonly CoveringLine[]): WaivedTogether[] {
  const waived = lines.flatMap(({ state, mark, waiver }) =>
    state === 'waived' && waiver ? [{ mark, who: waiver.by?.name ?? null, reason: waiver.reason }] : [],
  );
  const together = groupBy(waived, ({ who, reason }) => JSON.stringify([who, reason]));
  return [...together.values()].flatMap((said) => {
    const [first] = said;
    return first ? [{ marks: said.map(({ mark }) => mark), who: first.who, reason: first.reason }] : [];
  });
}
