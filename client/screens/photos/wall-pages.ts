/** Photos that are asked for at once: a screenful of a large window. */
export const PAGE = 60;

/** Positions [first, end) of a day, and one besides. */
export interface Part {
  readonly day: string | null;
  readonly first: number;
  readonly end: number;
  readonly besides: number | null;
}

export interface WallPage {
  readonly day: string | null;
  readonly page: number;
}

/** The pages that hold these parts, each once. */
export function pagesOf(parts: readonly Part[]): WallPage[] {
  return parts.flatMap(({ day, first, end, besides }) => {
    const pages = new Set(besides === null ? [] : [Math.floor(besides / PAGE)]);
    for (let page = Math.floor(first / PAGE); first < end && page * PAGE < end; page++) pages.add(page);
    return [...pages].map((page) => ({ day, page }));
  });
}
