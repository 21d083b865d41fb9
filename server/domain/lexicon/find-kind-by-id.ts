import { KINDS, type Kind } from './kinds.ts';

const byId: ReadonlyMap<string, Kind> = new Map(KINDS.map((kind) => [kind.id, kind]));

export function findKindById(id: string): Kind | undefined {
  return byId.get(id);
}
