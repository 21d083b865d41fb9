import type { PathParameters, QueryInput, RouteName } from '#domain/contract/routes';
import { PATHS } from './paths.ts';

export const API_BASE = '/api/v1';

/** The address of a route below this origin, for links, images and fetches. */
export function addressOf<N extends RouteName>(
  name: N,
  params?: PathParameters<N>,
  query?: QueryInput<N>,
): string {
  const values: Record<string, string> = params ?? {};
  const path = PATHS[name][1].replace(/\{(\w+)\}/g, (_, key: string) => {
    const value = values[key];
    if (value === undefined) throw new Error(`The path of ${name} needs ${key}.`);
    return encodeURIComponent(value);
  });
  return `${API_BASE}${path}${queryString(query ?? {})}`;
}

function queryString(query: object): string {
  const search = new URLSearchParams();
  for (const [key, value] of Object.entries(query)) {
    if (value !== undefined && value !== null) search.set(key, String(value));
  }
  const text = search.toString();
  return text === '' ? '' : `?${text}`;
}
