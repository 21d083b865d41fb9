import { STAGES, type Stage } from '#domain/frame/stage';

/** What of the photos is asked for; it stands in the address, so that the bench can walk the same list. */
export interface PhotoFilter {
  readonly day?: string;
  readonly mark?: string;
  readonly stage?: Stage;
  /** Id of whoever added them. */
  readonly by?: string;
  readonly untagged?: '1';
}

/** In the address beside the filter: the photo at which one was. */
export const AT = 'at';

export function readFilter(search: URLSearchParams): PhotoFilter {
  const day = search.get('day');
  const mark = search.get('mark');
  const stage = STAGES.find((known) => known === search.get('stage'));
  const by = search.get('by');
  return {
    ...(day !== null && /^\d{4}-\d{2}-\d{2}$/.test(day) ? { day } : {}),
    ...(mark ? { mark } : {}),
    ...(stage ? { stage } : {}),
    ...(by ? { by } : {}),
    ...(search.get('untagged') === '1' ? { untagged: '1' } : {}),
  };
}

/** With the question mark, or empty; `at` is a photo to come back to. */
export function filterAddress(filter: PhotoFilter, at?: string): string {
  const text = new URLSearchParams({ ...filter, ...(at === undefined ? {} : { [AT]: at }) }).toString();
  return text === '' ? '' : `?${text}`;
}

export function isFiltered(filter: PhotoFilter): boolean {
  return Object.keys(filter).length > 0;
}

export function without(filter: PhotoFilter, key: keyof PhotoFilter): PhotoFilter {
  return Object.fromEntries(Object.entries(filter).filter(([name]) => name !== key));
}

/** What every part of the filter's controls is given. */
export interface FilterProps {
  house: string;
  filter: PhotoFilter;
  onChange: (filter: PhotoFilter) => void;
}
