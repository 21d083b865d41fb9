import type { TermFacts } from '#domain/contract/terms';
import type { Kind } from '#domain/lexicon/kinds';

/** What stands in the form of a term, as typed. */
export interface TermDraft extends Pick<TermFacts, 'kanji' | 'kana' | 'romaji' | 'en' | 'does'> {
  readonly also: string;
  readonly section: string;
  readonly family: Kind['family'];
  readonly track: Kind['track'];
  readonly lies: Kind['lies'];
  readonly hiddenBy: Kind['hiddenBy'];
}

export const EMPTY_TERM: TermDraft = {
  ...{ kanji: '', kana: '', romaji: '', en: '', also: '', does: '', section: '' },
  ...{ family: 'post', track: 'wall', lies: 'upright', hiddenBy: ['plaster-over-posts'] },
};

export function termDraft({ also, section, ...kind }: Kind, does: string): TermDraft {
  const { kanji, kana, romaji, en, family, track, lies, hiddenBy } = kind;
  return {
    ...{ kanji, kana, romaji, en, family, track, lies, hiddenBy, does },
    also: also.join(', '),
    section: section?.join('×') ?? '',
  };
}

/** Two numbers, however they are parted; null: none; undefined: neither. */
export function readSection(text: string): [number, number] | null | undefined {
  const plain = text.normalize('NFKC').trim();
  if (plain === '') return null;
  const [, a, b] = /^(\d{1,4})\s*(?:mm)?\s*[×xX*·,\s]\s*(\d{1,4})\s*(?:mm)?$/.exec(plain) ?? [];
  const [one, other] = [Number(a), Number(b)];
  return one >= 1 && other >= 1 && one <= 2000 && other <= 2000 ? [one, other] : undefined;
}

export function readAlso(text: string): string[] {
  const names = text.split(/[,、，;]/).map((name) => name.trim());
  return [...new Set(names.filter((name) => name !== ''))];
}

export type TermWrong = { readonly name: boolean; readonly section: boolean };

export function readTermDraft(draft: TermDraft): { facts: TermFacts } | { wrong: TermWrong } {
  const section = readSection(draft.section);
  const [kanji, en] = [draft.kanji.trim(), draft.en.trim()];
  const hasName = kanji !== '' || en !== '';
  if (!hasName || section === undefined) return { wrong: { name: !hasName, section: section === undefined } };
  const { family, track, lies, hiddenBy } = draft;
  return {
    facts: {
      ...{ kanji, en, family, track, lies, section },
      kana: draft.kana.trim(),
      romaji: draft.romaji.trim(),
      also: readAlso(draft.also),
      hiddenBy: [...hiddenBy],
      does: draft.does.trim(),
    },
  };
}
