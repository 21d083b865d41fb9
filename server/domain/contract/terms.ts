import { z } from 'zod';
import { FAMILIES, LIES } from '../lexicon/family.ts';
import { COVERING_FORMS } from '../record/covering-form.ts';
import { CaptureShape } from './capture.ts';
import { Id, Instant, PersonShape, StageShape, TrackShape, MarkShape } from './shapes.ts';

const word = z
  .string()
  .trim()
  .max(60)
  .regex(/^[^\p{Cc}\p{Cs}|]*$/u);
const millimetres = z.number().int().min(1).max(2000);

/** A kind of its own: a UUID made by the client; one that comes with the program: its id, to rename it. */
export const TermId = z.union([Id, z.string().regex(/^[a-z]{2,40}$/)]);

/** What a crew says of a kind. One of kanji and English is needed, to call it by. */
export const TermFacts = z.strictObject({
  kanji: word.default(''),
  kana: word.default(''),
  romaji: word.default('').meta({ description: 'Hepburn.' }),
  en: word.default(''),
  also: z.array(word.min(1)).max(20).default([]),
  family: z.enum(FAMILIES),
  track: TrackShape,
  lies: z.enum(LIES),
  section: z.tuple([millimetres, millimetres]).nullable().default(null).meta({
    description: 'mm; upright pieces width and depth in plan, others thickness and height.',
  }),
  hiddenBy: z.array(z.enum(COVERING_FORMS)).max(COVERING_FORMS.length).default([]),
  does: z.string().trim().max(300).default('').meta({ description: 'What it does, in one line.' }),
});
export type TermFacts = z.infer<typeof TermFacts>;

export const TermView = TermFacts.extend({
  id: TermId,
  by: PersonShape.nullable(),
  at: Instant,
}).meta({ id: 'Term' });
export type TermView = z.infer<typeof TermView>;

/** A region of this house's photos that shows a member of some kind. */
export const KindSightingView = z.object({
  tag: Id,
  photo: Id,
  mark: MarkShape,
  stage: StageShape,
  fileName: z.string(),
  capture: CaptureShape,
  crop: z.string().meta({ description: 'Address of the crop.' }),
});
export type KindSightingView = z.infer<typeof KindSightingView>;
