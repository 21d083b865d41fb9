import { z } from 'zod';
import { StretchShape, ZoneShape } from './frame-shapes.ts';
import { Day, Id, Instant, MarkShape, PersonShape, line, paragraph } from './shapes.ts';

/** Temporary protection (養生), such as sheets and boards over a finished sill. */
export const ProtectionFacts = z.strictObject({
  name: line(200),
  what: line(200).meta({ description: 'What lies there, e.g. "sheet, boards".' }),
  zone: ZoneShape.nullable().default(null).meta({
    description: 'It lies over every member in this space, of whatever kind; null: only over what is listed.',
  }),
  hides: z.array(MarkShape).max(20_000).default([]).meta({ description: 'Members listed by hand, whole.' }),
  except: z.array(MarkShape).max(20_000).default([]).meta({
    description: 'Members that lie in the zone and stay bare.',
  }),
  laidAt: Instant,
  liftingDay: Day.nullable().default(null).meta({ description: 'The day on which it is to be lifted.' }),
  note: paragraph(2000).default(''),
});
export type ProtectionFacts = z.infer<typeof ProtectionFacts>;

const ProtectedView = z.object({
  mark: MarkShape,
  stretch: StretchShape.nullable().meta({
    description: 'What of it lies under protection; null: all of it.',
  }),
  byZone: z.boolean(),
});
const Said = z.object({ at: Instant, by: PersonShape.nullable() });

export const ProtectionView = ProtectionFacts.extend({
  id: Id,
  hides: z.array(ProtectedView),
  laidBy: PersonShape.nullable(),
  changedAt: Instant,
  lifted: Said.extend({ note: z.string() }).nullable().meta({ description: 'null: it still lies.' }),
  withdrawn: Said.extend({ reason: z.string() }).nullable().meta({
    description: 'Said by mistake: it never lay there.',
  }),
}).meta({ id: 'Protection' });
export type ProtectionView = z.infer<typeof ProtectionView>;
