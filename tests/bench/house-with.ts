import { STAGES, type Stage } from '#domain/frame/stage';
import type { ClosingReportInput } from '#domain/record/closing-report';

/** Ten tags a member, a covering for each fifty members, every member hidden by two of them. */
export function houseWith(tags: number): ClosingReportInput {
  const marks = Array.from({ length: tags / 10 }, (_, i) => `${'いろはにほへとちりぬ'[i % 10]}${i}`);
  const coverings = Array.from({ length: Math.ceil(marks.length / 50) }, (_, c) => ({
    id: idOf(tags, 0, c),
    name: `Wall ${c}`,
    kind: 'plaster' as const,
    plannedDay: `2026-05-${String((c % 28) + 1).padStart(2, '0')}`,
    closedAt: c % 3 === 0 ? '2026-04-20T00:00:00.000Z' : null,
    closedDay: c % 3 === 0 ? '2026-04-20' : null,
    hides: Array.from({ length: 100 }, (_, i) => ({
      mark: marks[(c * 50 + i) % marks.length] as string,
      least: 'pegged' as const,
    })),
  }));
  return {
    members: marks.map((mark) => ({ mark, kind: '貫', place: '一階', retired: false })),
    coverings,
    tags: Array.from({ length: tags }, (_, i) => ({
      id: idOf(tags, 1, i),
      photo: idOf(tags, 2, i),
      mark: marks[i % marks.length] as string,
      stage: STAGES[i % 4] as Stage,
      doubt: null,
      uncertaintyS: 60,
      datedBy: i % 13 === 0 ? null : ('file' as const),
      legibility: null,
      findings: [],
      instant: i % 13 === 0 ? null : new Date(Date.UTC(2026, 3, 1, 0, i % 40_000)).toISOString(),
    })),
    asOf: '2026-05-01T00:00:00.000Z',
    today: '2026-05-01',
  };
}

/** Different for each size, so that all sizes fit into one database. */
function idOf(size: number, group: number, n: number): string {
  const digits = (value: number, length: number) => String(value).padStart(length, '0');
  return `${digits(size, 8)}-000${group}-4000-8000-${digits(n, 12)}`;
}
