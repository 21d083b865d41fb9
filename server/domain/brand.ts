declare const brand: unique symbol;

/** A value of `T` that only one parser hands out, so that units and spaces cannot be mixed up. */
export type Brand<T, Name extends string> = T & { readonly [brand]: Name };
