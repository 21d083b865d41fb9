export interface RubyPart {
  readonly base: string;
  /** null where the base is kana and reads itself. */
  readonly reading: string | null;
}

const KANA = /(\p{Script=Hiragana}+)/u;

/** A word cut where kanji and kana meet, each run of kanji with its part of the reading: 通(とお) し 柱(ばしら). */
export function rubyParts(word: string, reading: string): RubyPart[] {
  const runs = word.split(KANA).filter((run) => run !== '');
  const pattern = runs.map((run) => (KANA.test(run) ? `(${run})` : '(.+?)')).join('');
  const found = new RegExp(`^${pattern}$`, 'u').exec(reading);
  if (!found) return [{ base: word, reading }];
  return runs.map((base, i) => ({ base, reading: KANA.test(base) ? null : (found[i + 1] ?? '') }));
}
