import type { Role } from './shapes.ts';

/**
 * What a role allows in its house. `contribute`: photos, notes, answers to findings; `record`: whatever the
 * record says of the frame, above all tags; `review`: releasing and refusing what is to be covered;
 * `export`: all of it at once, originals and ledger, for those who must be able to show it without this program;
 * `rule`: people and the house's own facts. Whoever records does not review, except the keeper of the record,
 * and of the keeper's own records the rule of two persons takes care.
 */
export const ACTS = ['read', 'contribute', 'record', 'review', 'export', 'rule'] as const;
export type Act = (typeof ACTS)[number];

const ALLOWED: Record<Role, readonly Act[]> = {
  owner: ACTS,
  carpenter: ['read', 'contribute', 'record'],
  inspector: ['read', 'contribute', 'review', 'export'],
  builder: ['read'],
};

export function mayAct(role: Role, act: Act): boolean {
  return ALLOWED[role].includes(act);
}

export function rolesThatMay(act: Act): Role[] {
  return (Object.keys(ALLOWED) as Role[]).filter((role) => mayAct(role, act));
}
