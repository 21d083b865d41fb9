export const LANGUAGES = ['en', 'ja'] as const;
export type Language = (typeof LANGUAGES)[number];

const STORED = 'arakabe.language';

export function isLanguage(value: unknown): value is Language {
  return value === 'en' || value === 'ja';
}

/** What the person chose before, else the first of the browser's languages that we speak. */
export function initialLanguage(stored: string | null, wished: readonly string[]): Language {
  if (isLanguage(stored)) return stored;
  return wished.map((tag) => tag.slice(0, 2).toLowerCase()).find(isLanguage) ?? 'en';
}

/** Storage can be forbidden by the browser; the language then lasts until the page is left. */
export function readStoredLanguage(): string | null {
  try {
    return localStorage.getItem(STORED);
  } catch {
    return null;
  }
}

export function storeLanguage(language: Language): void {
  try {
    localStorage.setItem(STORED, language);
  } catch {
    return;
  }
}
