import type { TranslationOf } from '../catalog.ts';
import type { roles as english } from '../en/roles.ts';

export const roles = {
  title: 'この役割では使えません',
  text: 'この建物でのあなたの役割は「{{role}}」です。このページは記録を変えるためのもので、この役割では使えません。記録の責任者に頼んでください。',
} as const satisfies TranslationOf<typeof english>;
