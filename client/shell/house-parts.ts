/** The parts of a house's record, each with the first piece of its paths. */
export const HOUSE_PARTS = [
  { path: '', word: 'journal', also: ['days'] },
  { path: 'photos', word: 'photos', also: ['plan'] },
  { path: 'frame', word: 'frame', also: ['grid'] },
  { path: 'members', word: 'members', also: ['schedule', 'lexicon'] },
  { path: 'coverings', word: 'coverings', also: ['needs', 'releases'] },
  { path: 'report', word: 'report', also: ['shots'] },
  { path: 'findings', word: 'findings' },
  { path: 'people', word: 'people' },
  { path: 'ledger', word: 'ledger' },
  { path: 'settings', word: 'settings' },
] as const satisfies readonly { path: string; word: string; also?: readonly string[] }[];

export type HousePart = (typeof HOUSE_PARTS)[number]['word'];

/** The part that a path below the house belongs to: a day page is part of the journal. */
export function partOf(below: string): HousePart | null {
  const [first = ''] = below.split('/');
  return (
    HOUSE_PARTS.find(
      (part) => part.path === first || ('also' in part && (part.also as readonly string[]).includes(first)),
    )?.word ?? null
  );
}
