/**
 * What a translation of `T` must have: the same keys with other words. A singular form (`…_one`) may be
 * left out, since Japanese does not tell one from many.
 */
export type TranslationOf<T> = {
  readonly [K in keyof T as K extends `${string}_one` ? never : K]: T[K] extends string
    ? string
    : TranslationOf<T[K]>;
};
