import { queryOptions, type QueryFunctionContext, type QueryKey } from '@tanstack/react-query';
import { touchLogOf } from './touch-logs.ts';

/** An answer, and how much of what happened in the house it knows. */
interface Known<View> {
  readonly upTo: number;
  readonly view: View;
}

export interface Amended<View, Part> {
  readonly house: string;
  readonly queryKey: QueryKey;
  readonly readWhole: (signal: AbortSignal) => Promise<View>;
  /** What tags on a photo can have changed. */
  readonly readPart: (photo: string, signal: AbortSignal) => Promise<Part>;
  /** The view with the part in its place; null where it does not fit, so that the whole is to be read. */
  readonly amend: (view: View, part: Part) => View | null;
}

/** More photos at once are read with the whole. */
const FEW = 3;

/** A large answer of which, after a tag, only the part that it can change is read again. */
export function amendedQuery<View, Part>(parts: Amended<View, Part>) {
  return queryOptions({
    queryKey: parts.queryKey,
    queryFn: async ({ client, signal }: QueryFunctionContext): Promise<Known<View>> => {
      const log = touchLogOf(client, parts.house);
      const upTo = log.size();
      const known = client.getQueryData<Known<View>>(parts.queryKey);
      const photos = known ? log.photosFrom(known.upTo) : null;
      const amended = known && photos ? await amendWith(parts, known.view, photos, signal) : null;
      return { upTo, view: amended ?? (await parts.readWhole(signal)) };
    },
    select: ({ view }: Known<View>) => view,
  });
}

async function amendWith<View, Part>(
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
