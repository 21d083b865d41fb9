export type Catalog = { readonly [key: string]: string | Catalog };

/** What is wrong between two catalogs of one name: keys that one lacks, empty texts, other placeholders. */
export function compareCatalogs(english: Catalog, japanese: Catalog): string[] {
  const [en, ja] = [byKey(english), byKey(japanese)];
  const lacking = [
    ...[...en.keys()].filter((key) => !ja.has(key)).map((key) => `ja lacks ${key}`),
    ...[...ja.keys()].filter((key) => !en.has(key)).map((key) => `en lacks ${key}`),
  ];
  const differing = [...en]
    .filter(([key, texts]) => ja.has(key) && placeholders(texts) !== placeholders(ja.get(key) ?? []))
    .map(([key]) => `${key}: the placeholders differ`);
  return [...lacking, ...differing, ...empties('en', en), ...empties('ja', ja)];
}

/** Plural forms count as one key: English has two, Japanese one (Unicode CLDR, plural rules). */
function byKey(catalog: Catalog, prefix = ''): Map<string, string[]> {
  const found = new Map<string, string[]>();
  const add = (key: string, texts: string[]) => found.set(key, [...(found.get(key) ?? []), ...texts]);
  for (const [name, value] of Object.entries(catalog)) {
    if (typeof value === 'string') add(prefix + name.replace(/_(zero|one|two|few|many|other)$/, ''), [value]);
    else for (const [key, texts] of byKey(value, `${prefix}${name}.`)) add(key, texts);
  }
  return found;
}

function placeholders(texts: string[]): string {
  const names = texts.flatMap((text) =>
    [...text.matchAll(/\{\{\s*-?\s*([\w.]+)/g)].map((match) => match[1] ?? ''),
  );
  return [...new Set(names)].sort().join(' ');
}

function empties(language: string, texts: Map<string, string[]>): string[] {
  return [...texts]
    .filter(([, values]) => values.some((value) => value.trim() === ''))
    .map(([key]) => `${language} ${key} is empty`);
}
