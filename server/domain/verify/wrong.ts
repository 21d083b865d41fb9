import { WRONG_SENTENCES, type WrongCode } from './wrong-sentences.ts';

export interface Place {
  /** As it is named in the archive; empty for the archive as a whole. */
  readonly file: string;
  /** Counted from 1. */
  readonly line?: number;
  /** From the beginning of the file, counted from 0. */
  readonly byte?: number;
}

export type WrongParams = Readonly<Record<string, string | number>>;

/** The first thing that is wrong with an archive. */
export class Wrong extends Error {
  constructor(
    readonly code: WrongCode,
    readonly place: Place,
    readonly params: WrongParams = {},
  ) {
    super(sayWrong(code, place, params));
  }
}

/** The English sentence; other languages have their own in the client's catalogs. */
function sayWrong(code: WrongCode, { file, line, byte }: Place, params: WrongParams): string {
  const sentence = WRONG_SENTENCES[code].replace(/\{\{(\w+)\}\}/g, (_, name: string) =>
    String(params[name] ?? ''),
  );
  const where = [
    file,
    line === undefined ? '' : `line ${line}`,
    byte === undefined ? '' : `byte ${byte}`,
  ].filter((part) => part !== '');
  return where.length === 0 ? sentence : `${where.join(', ')}: ${sentence}`;
}
