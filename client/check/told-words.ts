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
/** Never left out: a name can look like one with a role. */
function roleWords({ t }: Speech, role: string | null): string {
  if (role === null) return t('check.told.noRole');
  return isRole(role) ? t(`common.role.${role}`) : role;
}

const isRole = (role: string): role is Role => Object.hasOwn(ROLES, role);

/** By whom and when, in the role of then. */
export function saidWords(speech: Speech, { at, by, role }: Said): string {
  const { t, lang, zone } = speech;
  const who =
    by === null
      ? t('check.paper.program')
      : t('check.told.person', { name: by, role: roleWords(speech, role) });
  return t('check.told.said', { who, when: formatInstant(at, zone, lang) });
}

/** The same with its place in the ledger. */
export function placedWords(speech: Speech, said: Said): string {
  return speech.t('check.told.placed', { said: saidWords(speech, said), number: said.seq + 1 });
}

/** The same with its reason; in the words of an undo there may be none. */
export function reasonedWords(speech: Speech, said: Said & { readonly reason: string }): string {
  const placed = placedWords(speech, said);
  return said.reason === ''
    ? placed
    : speech.t('check.told.withReason', { said: placed, reason: said.reason });
}
