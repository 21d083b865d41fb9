import type { Catalog } from './compare-catalogs.ts';

/** Placeholders that stand for a number wherever they occur; those in TOLD hold words where named. */
const NUMBERS = [
  ...['count', 'total', 'shown', 'done', 'at', 'hidden', 'onRecord', 'gaps', 'lost'],
  ...['added', 'changed', 'retired', 'badRows', 'known', 'refused', 'failed', 'percent', 'metres'],
];

/** Here the screen puts in what another sentence has counted already, e.g. 部材 3本, or a day. */
const TOLD = [
  'days.gapsLeft hidden',
  'ledger.say.covering.planned hidden',
  'ledger.say.covering.changed hidden',
  'schedule.done added',
  'schedule.done changed',
  'schedule.done retired',
];

/** What Japanese counts with in this program; after a number in words, never left out. */
const COUNTER = /^\s?(?:枚|本|件|個|か所|行|項目|種類|文字|日|秒|分|時間|％| m)/u;

const PLURAL = /_(?:one|other)$/;

/** English needs both forms where a word follows the number; one that stands alone, or before a unit, has one. */
const COUNTED_WORD = /\{\{count[^}]*\}\} (?!min\b)\p{L}{2,}/u;

/** Keys of English sentences that count a thing and lack its singular or its plural. */
export function lackingPlurals(english: Catalog): string[] {
  const texts = flat(english);
  return [...texts].flatMap(([key, text]) => {
    if (!PLURAL.test(key)) return COUNTED_WORD.test(text) ? [`${key} counts without a plural`] : [];
    const other = key.endsWith('_one') ? key.replace(PLURAL, '_other') : key.replace(PLURAL, '_one');
    return texts.has(other) ? [] : [`${other} is missing`];
  });
}

/** Placeholders of Japanese sentences that hold a number and are not followed by its counter. */
export function lackingCounters(japanese: Catalog): string[] {
  return [...flat(japanese)].flatMap(([key, text]) =>
    [...text.matchAll(/\{\{(\w+)[^}]*\}\}/gu)]
      .map((match) => ({ name: match[1] ?? '', after: text.slice(match.index + match[0].length) }))
      .filter(({ name, after }) => NUMBERS.includes(name) && !COUNTER.test(after))
      .map(({ name }) => `${key.replace(PLURAL, '')} ${name}`)
      .filter((place) => !TOLD.includes(place)),
  );
}

function flat(catalog: Catalog, prefix = ''): Map<string, string> {
  return new Map(
    Object.entries(catalog).flatMap(([name, value]) =>
      typeof value === 'string' ? [[prefix + name, value] as const] : [...flat(value, `${prefix}${name}.`)],
    ),
  );
}
