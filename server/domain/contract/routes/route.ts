import type { z } from 'zod';
import type { Act } from '../acts.ts';

/** One route of the API: the server implements it, the client calls it, OpenAPI is made of it. */
export interface Route {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Below /api/v1, with {parameters}. */
  readonly path: string;
  readonly summary: string;
  /** 'anyone' needs no account, 'account' any; an act a role in the house of the path that allows it. */
  readonly access: 'anyone' | 'account' | Act;
  readonly query?: z.ZodObject;
  /** JSON body; routes with another body say its media types in `consumes`. */
  readonly body?: z.ZodType;
  readonly consumes?: readonly string[];
  readonly status: 200 | 201 | 204;
  /** JSON answer; routes with another answer say its media types in `produces`. */
  readonly answer?: z.ZodType;
  readonly produces?: readonly string[];
}

export const route = <const R extends Route>(r: R): R => r;
