import type { TranslationOf } from '../catalog.ts';
import type { roles as english } from '../en/roles.ts';

export const roles = {
  title: 'この役割では使えません',
  text: 'このページは記録を変えるためのものです。この建物でのあなたの役割は「{{role}}」なので使えません。変える必要があるときは、記録の責任者に頼んでください。',
} as const satisfies TranslationOf<typeof english>;
