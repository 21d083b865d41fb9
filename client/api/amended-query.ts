import {
  queryOptions,
  replaceEqualDeep,
  type QueryFunctionContext,
  type QueryKey,
} from '@tanstack/react-query';
import { FRESH_MS } from './query-client.ts';
import { touchLogOf } from './touch-logs.ts';

export interface Amended<View extends object, Part> {
  readonly house: string;
  readonly queryKey: QueryKey;
  readonly readWhole: (signal: AbortSignal) => Promise<View>;
  /** What tags on a photo can have changed. */
  readonly readPart: (photo: string, signal: AbortSignal) => Promise<Part>;
  /** The view with the part in its place; null where it does not fit, so that the whole is to be read. */
  readonly amend: (view: View, part: Part) => View | null;
}

/** Of a query that is amended. */
export const AMENDED = { isAmended: true } as const;

/** More photos at once are read with the whole. */
const FEW = 3;

/** How much of what happened in the house an answer knows. */
const knownUpTo = new WeakMap<object, number>();
const amendedOnes = new WeakSet();

/**
 * A large answer of which, after a tag, only the part that it can change is read again. What has been invalidated,
 * by whatever else was said, is read whole; a tag invalidates nothing here (api/use-house-events).
 */
export function amendedQuery<View extends object, Part>(parts: Amended<View, Part>) {
  const log = touchLogOf(parts.house);
  return queryOptions({
    queryKey: parts.queryKey,
    queryFn: async ({ client, signal }: QueryFunctionContext): Promise<View> => {
      const upTo = log.size();
      const { data: before, isInvalidated } = client.getQueryState<View>(parts.queryKey) ?? {};
      const photos = before && !isInvalidated ? log.photosFrom(knownUpTo.get(before) ?? -1) : null;
      const amended = before && photos ? await amendWith(parts, before, photos, signal) : null;
      const view = amended ?? (await parts.readWhole(signal));
      if (amended) amendedOnes.add(amended);
      knownUpTo.set(view, upTo);
      return view;
    },
    structuralSharing: keepEqualParts,
    staleTime: ({ state: { data } }) => (data && (knownUpTo.get(data) ?? -1) < log.size() ? 0 : FRESH_MS),
    meta: AMENDED,
  });
}

/** What was amended has kept all that is the same; compared place by place, moved lines would all be new. */
function keepEqualParts(before: unknown, now: unknown): unknown {
  if (amendedOnes.has(now as object)) return now;
  const kept: unknown = replaceEqualDeep(before, now);
  knownUpTo.set(kept as object, knownUpTo.get(now as object) ?? -1);
  return kept;
}

async function amendWith<View extends object, Part>(
  { readPart, amend }: Amended<View, Part>,
  view: View,
  photos: readonly string[],
  signal: AbortSignal,
): Promise<View | null> {
  if (photos.length > FEW) return null;
  let amended: View | null = view;
  for (const photo of photos) amended = amended && amend(amended, await readPart(photo, signal));
  return amended;
}
