import type { Camera } from '#domain/contract/clock';

/** As people call it; many makers repeat their name in the model. Null where the file names no camera. */
export function cameraName({ make, model }: Pick<Camera, 'make' | 'model'>): string | null {
  return model !== null && make !== null && !model.startsWith(make) ? `${make} ${model}` : (model ?? make);
}
