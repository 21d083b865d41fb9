import { z } from 'zod';
import { WALL_RULES } from '../frame/wall-rules.ts';
import { MarkShape } from './shapes.ts';

/** What the schedule says of a wall, beside published figures. Information, never approval. */

const UnitShape = z.enum(['mm', 'pieces']);

export const WallResultView = z.object({
  rule: z.enum(WALL_RULES),
  figure: z.object({
    at: z.enum(['least', 'most']),
    limit: z.number(),
    unit: UnitShape,
    read: z
      .enum(['quotation', 'summary', 'memory'])
      .meta({ description: 'Where the figure was read: never in the text itself.' }),
  }),
  measured: z.number().nullable(),
  verdict: z.enum(['as published', 'differs', 'cannot be told']),
  because: z.enum(['none-in-schedule', 'place-unknown', 'section-assumed', 'reading']).nullable(),
  looked: z.array(MarkShape),
  differing: z.array(MarkShape),
});
export type WallResultView = z.infer<typeof WallResultView>;

export const WallFiguresView = z
  .discriminatedUnion('told', [
    z.object({
      told: z.literal(false),
      because: z.enum(['no-wall', 'no-grid', 'zone-impossible']),
    }),
    z.object({
      told: z.literal(true),
      ruleSet: z.object({
        id: z.string(),
        source: z.string(),
        edition: z.string(),
        from: z.string(),
        until: z.string().nullable(),
        unconfirmed: z.array(z.string()),
        notLookedAt: z.array(z.string()),
      }),
      caution: z.string(),
      results: z.array(WallResultView),
    }),
  ])
  .meta({ id: 'WallFigures' });
export type WallFiguresView = z.infer<typeof WallFiguresView>;
