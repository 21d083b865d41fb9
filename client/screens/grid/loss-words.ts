import type { Language } from '../../i18n/language.ts';

interface LossWords {
  readonly coverings: (count: number) => string;
  readonly named: (name: string, isClosed: boolean) => string;
  readonly more: (count: number) => string;
  readonly members: (count: number) => string;
  readonly what: string;
  readonly saveAllTheSame: string;
}

/** Words of what a grid takes away. Beside the catalogs, so that the first visit does not fetch them. */
export const LOSS_WORDS: Readonly<Record<Language, LossWords>> = {
  en: {
    coverings: (count) =>
      count === 1
        ? '1 covering loses its zone, and hides nothing by it any more:'
        : `${String(count)} coverings lose their zones, and hide nothing by them any more:`,
    named: (name, isClosed) => (isClosed ? `${name} (closed)` : name),
    more: (count) => `and ${String(count)} more`,
    members: (count) =>
      count === 1 ? '1 member loses its place.' : `${String(count)} members lose their places.`,
    what: 'Nothing is saved yet. Put the lines or levels back, or save all the same and state those anew.',
    saveAllTheSame: 'Save all the same',
  },
  ja: {
    coverings: (count) => `ふさぎ工事${String(count)}件の範囲が失われ、その範囲で隠れる部材がなくなります：`,
    named: (name, isClosed) => (isClosed ? `${name}（ふさぎ済み）` : name),
    more: (count) => `ほか${String(count)}件`,
    members: (count) => `部材${String(count)}本の位置が失われます。`,
    what: 'まだ保存していません。通りや階を戻すか、このまま保存して範囲や位置を決め直してください。',
    saveAllTheSame: 'それでも保存する',
  },
};
