import { z } from 'zod';
import { Instant, Sha256 } from './shapes.ts';

/** Why a time-stamp service's answer is no stamp. */
export const STAMP_TROUBLES = [
  'silent',
  'rejected',
  'unreadable',
  'another-head',
  'another-request',
  'bad-signature',
  'untrusted',
] as const;
export type StampTroubleReason = (typeof STAMP_TROUBLES)[number];

export const StampsView = z
  .object({
    isConfigured: z.boolean().meta({ description: 'Whether this server asks a time-stamp service.' }),
    last: z
      .object({
        seq: z.int().meta({ description: 'The entry that holds the token.' }),
        size: z.int().meta({ description: 'Over how many entries the stamped head stands.' }),
        head: Sha256,
        at: Instant.meta({ description: 'The time that the service states.' }),
        by: z.string().meta({ description: 'The name of the service, from its certificate.' }),
      })
      .nullable(),
    trouble: z
      .object({ at: Instant, reason: z.enum(STAMP_TROUBLES) })
      .nullable()
      .meta({ description: 'Of the last request, where it brought no stamp.' }),
  })
  .meta({ id: 'Stamps' });
export type StampsView = z.infer<typeof StampsView>;
