/** Values that have exactly one canonical text. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/**
 * RFC 8785 (JSON Canonicalization Scheme): keys in order of UTF-16 code units, ECMAScript numbers and
 * string escapes, no white space. Throws TypeError on what JSON cannot say: undefined, NaN, infinities,
 * lone surrogates, functions, class instances.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return canonicalString(value);
  if (typeof value === 'number') return canonicalNumber(value);
  if (Array.isArray(value)) return `[${Array.from(value, canonicalJson).join(',')}]`;
  if (typeof value === 'object' && isPlain(value)) return canonicalObject(value as Record<string, unknown>);
  throw new TypeError(`Not a JSON value: ${typeof value}.`);
}

function canonicalString(text: string): string {
  if (!text.isWellFormed()) throw new TypeError('A string holds a lone surrogate.');
  return JSON.stringify(text);
}

function canonicalNumber(number: number): string {
  if (!Number.isFinite(number)) throw new TypeError(`Not a JSON number: ${number}.`);
  return JSON.stringify(number);
}

/** The default sort of strings is by UTF-16 code units, as RFC 8785 §3.2.3 asks. */
function canonicalObject(object: Record<string, unknown>): string {
  const parts = Object.keys(object)
    .sort()
    .map((key) => `${canonicalString(key)}:${canonicalJson(object[key])}`);
  return `{${parts.join(',')}}`;
}

function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}
