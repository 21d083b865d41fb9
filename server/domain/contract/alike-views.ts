import { z } from 'zod';
import { SmallPhotoView } from './small-photo.ts';

export const AlikePhotoView = SmallPhotoView.omit({ tags: true }).extend({
  distance: z.int().meta({ description: 'Bits in which the two pictures differ, of 64.' }),
});
export type AlikePhotoView = z.infer<typeof AlikePhotoView>;
