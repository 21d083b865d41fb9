import type { LegibilityMeasures } from '#domain/photo/legibility';
import type { Region } from '#domain/photo/region';
import type { Context } from './context.ts';

export interface MeasuredTag {
  readonly tag: string;
  /** null: the original cannot be decoded. */
  readonly measures: LegibilityMeasures | null;
}

export interface LegibilityLog {
  photosToMeasure(): Promise<string[]>;
  tagsToMeasure(photo: string): Promise<{ tag: string; region: Region }[]>;
  /** Notes what was found and tells whoever looks at the house. */
  measured(house: string, photo: string, tags: readonly MeasuredTag[]): Promise<void>;
}

/** Measures the regions of all tags on a photo that have not been, decoding the original once. */
export async function measureLegibility(context: Context, log: LegibilityLog, photo: string): Promise<void> {
  const waiting = await log.tagsToMeasure(photo);
  const file = waiting.length > 0 ? await context.store.read.photoFile(photo) : undefined;
  if (!file) return;
  const regions = waiting.map(({ region }) => region);
  const original = context.files.original(file.sha256);
  const measures = await context.imaging.measure(original, file.mediaType, regions);
  const tags = waiting.map(({ tag }, i) => ({ tag, measures: measures?.[i] ?? null }));
  await log.measured(file.house, photo, tags);
}
