import { z } from 'zod';
import { LEGIBILITY_REASONS, VERDICTS } from '../photo/legibility.ts';
import { Id } from './shapes.ts';

export const VerdictShape = z.enum(VERDICTS).nullable().meta({
  description: 'Whether a stranger could read the member in the region; null: not measured, or not yet.',
});

export const LegibilityView = z
  .object({
    verdict: VerdictShape,
    reasons: z
      .array(z.enum(LEGIBILITY_REASONS))
      .meta({ description: 'What is against it, the worst first.' }),
    acrossPx: z.number().nullable().meta({ description: 'Pixels of the original across the narrow side.' }),
    sharpness: z.int().nullable().meta({ description: 'How many of the finest details fit across it.' }),
  })
  .meta({ id: 'Legibility' });
export type LegibilityView = z.infer<typeof LegibilityView>;

export const BurstView = z
  .object({
    photos: z.array(Id).meta({ description: 'In order of capture, this one among them.' }),
    sharpest: Id,
  })
  .meta({ id: 'Burst' });
export type BurstView = z.infer<typeof BurstView>;
