/** What of the photos is asked for; it stands in the address, so that the bench can walk the same list. */
export interface PhotoFilter {
  readonly day?: string;
  readonly mark?: string;
  readonly untagged?: '1';
}

export function readFilter(search: URLSearchParams): PhotoFilter {
  const day = search.get('day');
  const mark = search.get('mark');
  return {
    ...(day !== null && /^\d{4}-\d{2}-\d{2}$/.test(day) ? { day } : {}),
    ...(mark ? { mark } : {}),
    ...(search.get('untagged') === '1' ? { untagged: '1' } : {}),
  };
}

/** With the question mark, or empty. */
export function filterAddress(filter: PhotoFilter): string {
  const text = new URLSearchParams({ ...filter }).toString();
  return text === '' ? '' : `?${text}`;
}

export function isFiltered(filter: PhotoFilter): boolean {
  return Object.keys(filter).length > 0;
}
