/** Which members 60 tags on 12 photos name, in the order in which they are tagged: five a photo. */
export interface Scenario {
  readonly what: string;
  readonly photos: readonly (readonly Member[])[];
  /** 'Place each drawing at once' is used where the marks follow each other. */
  readonly inARow: boolean;
  /** Counted in every run of the tests; all are by `npm run bench`. */
  readonly always: boolean;
  /** Presses and keys that were enough for all 60; the number may only fall. */
  readonly reached: number;
}

export interface Member {
  readonly mark: string;
  readonly kind: string;
  /** What a hand types to see it in the list, and what is read as nothing but its mark. */
  readonly part: string;
  readonly typed: string;
}

const LINES = [...'いろはにほへとちりぬるを'];
const ROMAJI = ['i', 'ro', 'ha', 'ni', 'ho', 'he', 'to', 'ti', 'ri', 'nu', 'ru', 'wo'];
const NUMERALS = ['一', '二', '三', '四', '五', '六', '七', '八', '九', '十', '十一', '十二'];

/** Twelve lines of five posts: い一 to い五 on the first photo, ろ一 to ろ五 on the second. */
const posts = LINES.map((line, i) =>
  NUMERALS.slice(0, 5).map((numeral, n): Member => ({
    mark: line + numeral,
    kind: '柱',
    part: String(n + 1),
    typed: `${ROMAJI[i]}${n + 1}`,
  })),
);

/** What a bay of a wall shows: a post, the rails beside it, and the beam above. */
const AT_A_CROSSING = ['柱', '地貫', '腰貫', '内法貫', '梁'];
const bays = NUMERALS.map((numeral, n) =>
  AT_A_CROSSING.map((kind, i): Member => ({
    mark: `い${numeral}${i === 0 ? '' : kind}`,
    kind,
    part: String(n + 1),
    typed: `i${n + 1}`,
  })),
);

/** The same posts without any order: the worst that can be asked. Every 23rd of 60, and 23 and 60 have no divisor in common. */
const shuffled = posts.map((photo, p) =>
  photo.map((_, i) => posts.flat()[((p * 5 + i) * 23) % 60] as Member),
);

export const SCENARIOS: readonly Scenario[] = [
  { what: 'rows of posts, placed at once', photos: posts, inARow: true, always: true, reached: 100 },
  { what: 'rows of posts', photos: posts, inARow: false, always: false, reached: 136 },
  { what: 'bays: post, three rails, beam', photos: bays, inARow: false, always: true, reached: 150 },
  { what: 'posts in no order', photos: shuffled, inARow: false, always: false, reached: 195 },
];
