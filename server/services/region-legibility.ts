import { RegionShape } from '#domain/contract/shapes';
import type { LegibilityView } from '#domain/contract/legibility-views';
import { readability, sharpnessOf } from '#domain/photo/legibility';
import { parseMediaFragment } from '#domain/photo/media-fragment';
import type { Region } from '#domain/photo/region';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** Whether a region could be read, before anything is said about it. */
export async function regionLegibility(
  context: Context,
  photo: string,
  text: string,
): Promise<LegibilityView> {
  const view = await context.store.read.photo(photo);
  if (!view) throw new Failure('not-found', { what: 'photo' });
  const region = parseRegion(text, view);
  const original = context.files.original(view.sha256);
  const [measures] = (await context.imaging.measure(original, view.mediaType, [region])) ?? [];
  if (!measures) return { verdict: null, reasons: ['not-measured'], acrossPx: null, sharpness: null };
  return { ...readability(measures), acrossPx: measures.acrossPx, sharpness: sharpnessOf(measures) };
}

/** A region as in a tag, in JSON, or a Media Fragments `xywh`. */
function parseRegion(text: string, image: { width: number; height: number }): Region {
  if (!text.trimStart().startsWith('{')) {
    const box = parseMediaFragment(text, image);
    if (!box) throw new Failure('crop-outside-image', { xywh: text });
    return { shape: 'rectangle', ...box };
  }
  const parsed = RegionShape.safeParse(valueOf(text));
  if (parsed.success) return parsed.data;
  const errors = parsed.error.issues.map(({ path, message }) => ({
    path: ['query', 'region', ...path].join('.'),
    message,
  }));
  throw new Failure('invalid-request', { count: errors.length }, errors);
}

function valueOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
