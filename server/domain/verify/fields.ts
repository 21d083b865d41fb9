import type { Json } from '../ledger/canonical-json.ts';

export type JsonObject = { readonly [key: string]: Json };

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/;

/** Thrown by `Fields`; whoever knows where it was read makes a `Wrong` of it. */
export class FieldMissing extends Error {
  constructor(readonly field: string) {
    super(field);
  }
}

/** Reads the fields of a JSON object, each of one type; throws FieldMissing with its name. */
export class Fields {
  readonly #object: JsonObject;

  constructor(value: Json | undefined, name: string) {
    if (!isObject(value)) throw new FieldMissing(name);
    this.#object = value;
  }

  get keys(): readonly string[] {
    return Object.keys(this.#object);
  }

  has(name: string): boolean {
    return Object.hasOwn(this.#object, name);
  }

  /** Whatever stands there, or `otherwise` where an older version had no such field. */
  any(name: string, otherwise?: Json): Json {
    const value = this.has(name) ? this.#object[name] : otherwise;
    if (value === undefined) throw new FieldMissing(name);
    return value;
  }

  text(name: string, form?: RegExp): string {
    const value = this.any(name);
    if (typeof value !== 'string' || (form && !form.test(value))) throw new FieldMissing(name);
    return value;
  }

  /** Text, or `otherwise` where an older version had no such field; null where that may stand there. */
  textOr<O extends string | null>(name: string, otherwise: O): string | O {
    const value = this.any(name, otherwise);
    return value === otherwise ? otherwise : this.text(name);
  }

  /** UTC with milliseconds; one that is in no calendar would break whatever shows it. */
  instant(name: string): string {
    const value = this.text(name, INSTANT);
    if (Number.isNaN(Date.parse(value))) throw new FieldMissing(name);
    return value;
  }

  count(name: string): number {
    const value = this.any(name);
    if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 0) throw new FieldMissing(name);
    return value;
  }

  object(name: string): Fields {
    return new Fields(this.any(name), name);
  }

  /** A list whose items are objects. */
  objects(name: string): Fields[] {
    return this.list(name).map((item) => new Fields(item, name));
  }

  texts(name: string): readonly string[] {
    const items = this.list(name);
    if (!items.every((item) => typeof item === 'string')) throw new FieldMissing(name);
    return items;
  }

  list(name: string): readonly Json[] {
    const value = this.any(name);
    if (!Array.isArray(value)) throw new FieldMissing(name);
    return value as readonly Json[];
  }
}

function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
