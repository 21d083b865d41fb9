import type { PostProcessorModule } from 'i18next';
import { withOneStop } from '#domain/one-stop';

interface Values {
  readonly replace?: Readonly<Record<string, unknown>>;
  readonly [name: string]: unknown;
}

/** What the catalogs fill in are often sentences of people. */
export const oneStop: PostProcessorModule = {
  type: 'postProcessor',
  name: 'one-stop',
  process: (text: string, _key, { replace, ...values }: Values) =>
    withOneStop(
      text,
      Object.values({ ...values, ...replace }).filter((value) => typeof value === 'string'),
    ),
};
