import { z } from 'zod';
import { COVERING_FORMS } from '../record/covering-form.ts';
import type { StatedRequirement } from '../record/requirements-of.ts';
import { StageShape } from './shapes.ts';

/** What a house says of one kind under one form of covering, instead of what is common. */
export const RequirementRow = z.strictObject({
  form: z.enum(COVERING_FORMS),
  kind: z.string().min(1).max(100).meta({ description: 'Id of a kind of the lexicon.' }),
  hides: z.boolean(),
  least: StageShape.nullable().meta({ description: 'null: the usual stage of its track.' }),
  views: z.number().int().min(1).max(10).meta({ description: 'Photos that must show each part of it.' }),
}) satisfies z.ZodType<StatedRequirement>;

export const RequirementsView = z.object({ rows: z.array(RequirementRow) }).meta({ id: 'Requirements' });
export type RequirementsView = z.infer<typeof RequirementsView>;
