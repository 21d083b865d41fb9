/** Browser and system by the words that a user agent holds; of several that fit the first, since browsers name each other. */
const BROWSERS = [
  ['Edg', 'Edge'],
  ['OPR', 'Opera'],
  ['SamsungBrowser', 'Samsung Internet'],
  ['Firefox', 'Firefox'],
  ['FxiOS', 'Firefox'],
  ['CriOS', 'Chrome'],
  ['Chrome', 'Chrome'],
  ['Safari', 'Safari'],
] as const;
const SYSTEMS = [
  ['iPhone', 'iPhone'],
  ['iPad', 'iPad'],
  ['Android', 'Android'],
  ['CrOS', 'ChromeOS'],
  ['Windows', 'Windows'],
  ['Macintosh', 'macOS'],
  ['Linux', 'Linux'],
] as const;

/** What a session was begun with, as far as its user agent says; null where it says nothing that is known. */
export function deviceName(userAgent: string | null): { browser: string; system: string } | null {
  const find = (names: readonly (readonly [string, string])[]) =>
    names.find(([word]) => userAgent?.includes(word))?.[1];
  const [browser, system] = [find(BROWSERS), find(SYSTEMS)];
  return browser && system ? { browser, system } : null;
}
