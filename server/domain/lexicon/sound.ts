const ROWS: readonly (readonly [consonant: string, kana: string])[] = [
  ['', 'あいうえお'],
  ['k', 'かきくけこ'],
  ['g', 'がぎぐげご'],
  ['s', 'さしすせそ'],
  ['z', 'ざじずぜぞ'],
  ['t', 'たちつてと'],
  ['d', 'だぢづでど'],
  ['n', 'なにぬねの'],
  ['h', 'はひふへほ'],
  ['b', 'ばびぶべぼ'],
  ['p', 'ぱぴぷぺぽ'],
  ['m', 'まみむめも'],
  ['r', 'らりるれろ'],
];
const KANA: ReadonlyMap<string, string> = new Map([
  ...ROWS.flatMap(([consonant, kana]) =>
    [...kana].map((sign, i) => [sign, consonant + 'aiueo'.charAt(i)] as const),
  ),
  ...([...'やゆよわをんっゔ'] as const).map(
    (sign, i) => [sign, ['ya', 'yu', 'yo', 'wa', 'o', "n'", '', 'bu'][i] ?? ''] as const,
  ),
]);
const SMALL: Readonly<Record<string, string>> = {
  ...{ ゃ: 'ya', ゅ: 'yu', ょ: 'yo' },
  ...{ ぁ: 'a', ぃ: 'i', ぅ: 'u', ぇ: 'e', ぉ: 'o' },
};

/** Kana as the consonants and vowels of the table of sounds; ち is ti, じ and ぢ are zi and di. */
function kanaSound(text: string): string {
  let out = '';
  for (const sign of text) {
    const small = SMALL[sign];
    if (small) out = out.replace(small.length === 2 ? /i$/ : /[aiueo]$/, '') + small;
    else out += KANA.get(sign) ?? sign;
  }
  return out;
}

/** Spellings of the same sound, Hepburn and what keyboards take beside it, in this order. */
const SAME: readonly (readonly [RegExp, string])[] = [
  [/ou|oo|oh(?![aiueoy])/g, 'o'],
  [/uu|uh(?![aiueoy])/g, 'u'],
  [/aa|ah(?![aiueoy])/g, 'a'],
  [/ii/g, 'i'],
  [/ee/g, 'e'],
  [/tch/g, 'ch'],
  [/sh(?=[aueo])/g, 'sy'],
  [/sh/g, 's'],
  [/ch(?=[aueo])/g, 'ty'],
  [/ch/g, 't'],
  [/j(?=[aueo])/g, 'zy'],
  [/jy?/g, 'z'],
  [/ts/g, 't'],
  [/dz|d(?=[iu])/g, 'z'],
  [/dy/g, 'zy'],
  [/f/g, 'h'],
  [/l/g, 'r'],
  [/v/g, 'b'],
  [/m(?=[bpm])/g, 'n'],
  [/([kstcpgzdbrhmy])\1/g, '$1'],
  [/nn+/g, 'n'],
];

/**
 * How a folded word in kana or Latin letters sounds, so that ō, ou, oh, oo and o, si and shi, n and m before
 * b, one letter and two are the same; parting signs are dropped. Other scripts stay.
 */
export function soundOf(folded: string): string {
  let sound = kanaSound(folded)
    .normalize('NFD')
    .replace(/[\u0300-\u036f\u3099ー'’`\-‐‑–\s.]/gu, '');
  for (const [spelling, same] of SAME) sound = sound.replace(spelling, same);
  return sound;
}

const UNVOICED: Readonly<Record<string, string>> = { g: 'k', z: 's', d: 't', b: 'h', p: 'h' };

/** Without voicing, as words change where they are joined: hashira and -bashira, tsuka and -zuka. */
export function unvoiced(sound: string): string {
  return sound
    .replace(/[gzdbp]/g, (sign) => UNVOICED[sign] ?? sign)
    .replace(/t(?=[iu])|ty/g, (sign) => (sign === 'ty' ? 'sy' : 's'));
}
