import type { Json } from '#domain/ledger/canonical-json';
import type { Person } from '#domain/contract/shapes';
import type { ArchivedCovering, ArchivedRelease } from '../../services/archive/archive-material.ts';
import type { Db } from '../open-database.ts';

/** What is said of holds and closings, read from the statements themselves. */
export interface Holds {
  /** By covering. */
  readonly holds: Map<string, NonNullable<ArchivedCovering['hold']>>;
  readonly closings: Map<string, Pick<ArchivedCovering, 'release' | 'without'>>;
  readonly releases: ArchivedRelease[];
}

const HOLDS = [
  'covering.ready',
  'covering.ready-withdrawn',
  'covering.refused',
  'covering.released',
  'release.withdrawn',
];
const CLOSINGS = ['covering.closed', 'covering.reopened'];

interface Said {
  readonly seq: number;
  readonly at: string;
  readonly by: Person | null;
  readonly kind: string;
  readonly payload: { readonly covering: string; readonly [field: string]: Json };
}

export async function readHolds(db: Db, house: string): Promise<Holds> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select('canonical')
    .where('houseId', '=', house)
    .where('kind', 'in', [...HOLDS, ...CLOSINGS])
    .orderBy('seq')
    .execute();
  const said = rows.map(({ canonical }) => JSON.parse(canonical) as Said);
  const holds: Holds['holds'] = new Map();
  const closings: Holds['closings'] = new Map();
  for (const { kind, seq, payload } of said) {
    const { covering, release = null, without = null } = payload;
    if (HOLDS.includes(kind)) holds.set(covering, { said: kind, seq });
    else if (kind === 'covering.closed') closings.set(covering, { release, without });
    else closings.delete(covering);
  }
  return { holds, closings, releases: releasesOf(said) };
}

function releasesOf(said: readonly Said[]): ArchivedRelease[] {
  const withdrawn = new Map(
    said.flatMap(({ kind, seq, at, by, payload: { release, reason } }) =>
      kind === 'release.withdrawn' ? [[release, { seq, at, by, reason }] as const] : [],
    ),
  );
  return said.flatMap(({ kind, seq, at, by, payload }) => {
    if (kind !== 'covering.released') return [];
    const { release = '', covering, head = null, hides = [], waived = [], note = '' } = payload;
    const fate = withdrawn.get(release) ?? null;
    return [
      {
        ...{ release, covering, seq, at, by, head, hides, waived, note },
        withdrawn: fate,
      } as ArchivedRelease,
    ];
  });
}
