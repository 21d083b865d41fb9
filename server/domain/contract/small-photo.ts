import { z } from 'zod';
import { Id, Instant } from './shapes.ts';

export const DERIVATIVE_STATES = ['pending', 'ready', 'damaged', 'unreadable'] as const;

/** As much of a photo as a small picture of it needs. */
export const SmallPhotoView = z.object({
  id: Id,
  fileName: z.string(),
  width: z.int(),
  height: z.int(),
  pictures: z.enum(DERIVATIVE_STATES),
  instant: Instant.nullable(),
  tags: z.int().meta({ description: 'Tags that stand.' }),
});
export type SmallPhotoView = z.infer<typeof SmallPhotoView>;
