import type { Role } from '#domain/contract/shapes';

export interface Person {
  /** Nobody in particular: a role, to be read in both languages. */
  readonly name: string;
  readonly email: string;
  readonly role: Role;
}

/** Who works on the boathouse. The carpenter opens the record and so keeps it. */
export const PEOPLE = {
  carpenter: { name: '大工 Carpenter', email: 'carpenter@example.org', role: 'owner' },
  second: { name: '大工二 Second carpenter', email: 'second@example.org', role: 'carpenter' },
  inspector: { name: '検査員 Inspector', email: 'inspector@example.org', role: 'inspector' },
  builder: { name: '工務店 Builder', email: 'builder@example.org', role: 'builder' },
} as const satisfies Record<string, Person>;

export type Who = keyof typeof PEOPLE;

/** Of an instance that is gone when it is stopped. */
export const PASSWORD = 'boathouse demo';
