import type { Lexicon } from '#domain/lexicon/lexicon';
import { reasonWords } from '../../i18n/taken-back.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

export interface Telling {
  readonly t: Words;
  readonly lang: Language;
  /** The house's zone. */
  readonly zone: string;
  /** Names of coverings by id: a closing names its covering by id alone. */
  readonly coverings: ReadonlyMap<string, string>;
  /** Names of protection by id: its lifting names it by id alone. */
  readonly protections?: ReadonlyMap<string, string>;
  /** The house's own words; without them those of the program. */
  readonly lexicon?: Lexicon;
}

export function withReason(t: Words, sentence: string, reason: string): string {
  return reason.trim() === '' ? sentence : t('ledger.reason', { sentence, reason: reasonWords(t, reason) });
}
