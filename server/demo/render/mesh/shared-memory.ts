export function sharedFloats(length: number): Float32Array<SharedArrayBuffer> {
  return new Float32Array(new SharedArrayBuffer(length * 4));
}

export function sharedInts(length: number): Int32Array<SharedArrayBuffer> {
  return new Int32Array(new SharedArrayBuffer(length * 4));
}

export function sharedWholes(length: number): Uint32Array<SharedArrayBuffer> {
  return new Uint32Array(new SharedArrayBuffer(length * 4));
}

export function sharedBytes(length: number): Uint8Array<SharedArrayBuffer> {
  return new Uint8Array(new SharedArrayBuffer(length));
}

/** A copy in memory that threads share. */
export function share<A extends { set(values: ArrayLike<number>): void }>(
  values: readonly number[],
  make: (length: number) => A,
): A {
  const copy = make(values.length);
  copy.set(values);
  return copy;
}
