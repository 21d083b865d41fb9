import type { RouteObject } from 'react-router';
import { loadCatalog, loadLater } from '../i18n/catalogs.ts';
import { LANGUAGES } from '../i18n/language.ts';

const QUIET_MS = 3000;

/** Fetches the code of every screen, and the words of every language, beforehand: on site the network goes while one walks from screen to screen. */
export function fetchWhenIdle(routes: readonly RouteObject[]): void {
  setTimeout(
    () =>
      void Promise.all([
        fetchAll(routes),
        ...LANGUAGES.flatMap((language) => [loadCatalog(language), loadLater(language)]),
      ]),
    QUIET_MS,
  );
}

/** One after the other, behind what a person is waiting for. What fails is fetched when it is needed. */
async function fetchAll(routes: readonly RouteObject[]): Promise<void> {
  for (const { lazy, children } of routes) {
    if (typeof lazy === 'function') await lazy().catch(() => undefined);
    if (children) await fetchAll(children);
  }
}
