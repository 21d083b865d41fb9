import { parsePaper, type Paper } from '#domain/verify/check-paper';

/** What was noted elsewhere, as it is typed. */
export interface Written {
  readonly size: string;
  readonly head: string;
  readonly release: string;
}

/** What came with the address, as by a code on paper. */
export function writtenIn(search: URLSearchParams): Written {
  const read = (name: string) => search.get(name) ?? '';
  return { size: read('size'), head: read('head'), release: read('release') };
}

/** null: nothing was written down; undefined: it cannot be read. */
export function paperOf(written: Written): Paper | null | undefined {
  const { size, head, release } = written;
  return `${size}${head}${release}`.trim() === '' ? null : parsePaper(written);
}
