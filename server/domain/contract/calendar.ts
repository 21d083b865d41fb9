import { z } from 'zod';
import { Instant } from './shapes.ts';

export const CalendarLangShape = z.enum(['en', 'ja']);
export type CalendarLang = z.infer<typeof CalendarLangShape>;

/** A person's address of the calendar of a house; its secret is shown only when it is made. */
export const CalendarLinkView = z
  .object({
    lang: CalendarLangShape.meta({ description: 'In which titles and texts are.' }),
    createdAt: Instant,
    lastReadAt: Instant.nullable().meta({ description: 'To the hour.' }),
  })
  .meta({ id: 'CalendarLink' });
export type CalendarLinkView = z.infer<typeof CalendarLinkView>;
