import type { Answer, BodyInput, PathParameters, QueryInput, RouteName } from '#domain/contract/routes';
import { addressOf } from './address.ts';
import { OfflineError } from './errors.ts';
import { PATHS } from './paths.ts';
import { refusal } from './session-end.ts';

export { OfflineError, ProblemError } from './errors.ts';

export interface CallArguments<N extends RouteName> {
  readonly params?: PathParameters<N>;
  readonly query?: QueryInput<N>;
  readonly body?: BodyInput<N>;
  /** A body that is not JSON. */
  readonly raw?: { readonly body: Blob | ArrayBuffer; readonly contentType: string };
  readonly signal?: AbortSignal;
}

/** Calls one route of the API. Throws ProblemError, OfflineError, or AbortError when `signal` fired. */
export async function call<N extends RouteName>(name: N, args: CallArguments<N> = {}): Promise<Answer<N>> {
  const response = await send(addressOf(name, args.params, args.query), {
    method: PATHS[name][0],
    credentials: 'same-origin',
    ...bodyOf(args),
    ...(args.signal ? { signal: args.signal } : {}),
  });
  const answer = await readJson(response);
  if (response.ok) return answer as Answer<N>;
  throw refusal(response.status, answer);
}

function bodyOf<N extends RouteName>(args: CallArguments<N>): RequestInit {
  const accept = { accept: 'application/json, application/problem+json' };
  if (args.raw) return { body: args.raw.body, headers: { ...accept, 'content-type': args.raw.contentType } };
  if (args.body === undefined) return { headers: accept };
  return { body: JSON.stringify(args.body), headers: { ...accept, 'content-type': 'application/json' } };
}

async function send(address: string, init: RequestInit): Promise<Response> {
  try {
    return await fetch(address, init);
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') throw error;
    throw new OfflineError('The server did not answer.', { cause: error });
  }
}

async function readJson(response: Response): Promise<unknown> {
  if (response.status === 204) return undefined;
  try {
    return await response.json();
  } catch {
    return undefined;
  }
}
