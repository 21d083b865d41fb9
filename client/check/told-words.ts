import type { Role } from '#domain/contract/shapes';
import type { Said } from '#domain/verify/replay/state';
import { formatInstant } from '../i18n/format.ts';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';

/** How the parts of what the ledger says are told. */
export interface Speech {
  readonly t: Words;
  readonly lang: Language;
  /** Of the house. */
  readonly zone: string;
}

const ROLES: Readonly<Record<Role, true>> = { owner: true, carpenter: true, inspector: true, builder: true };
const isRole = (role: string): role is Role => Object.hasOwn(ROLES, role);

/** By whom and when, in the role of then. */
export function saidWords({ t, lang, zone }: Speech, { at, by, role }: Said): string {
  const name = by ?? t('check.paper.program');
  const who =
    role === null
      ? name
      : t('check.told.person', { name, role: isRole(role) ? t(`common.role.${role}`) : role });
  return t('check.told.said', { who, when: formatInstant(at, zone, lang) });
}

/** The same with its place in the ledger. */
export function placedWords(speech: Speech, said: Said): string {
  return speech.t('check.told.placed', { said: saidWords(speech, said), number: said.seq + 1 });
}
