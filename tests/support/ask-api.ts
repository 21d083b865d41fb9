import type { Client } from './server.ts';

/** One operation as the OpenAPI document describes it. */
export interface Operation {
  readonly operationId: string;
  readonly method: string;
  readonly path: string;
  readonly roles: readonly string[] | undefined;
  readonly description: string;
  readonly required: readonly string[];
}

interface ApiDocument {
  paths: Record<string, Record<string, Described>>;
}
interface Described {
  operationId: string;
  description: string;
  'x-roles'?: string[];
  parameters: { name: string; in: string; required: boolean }[];
}

export async function operationsOf(client: Client): Promise<Operation[]> {
  const { paths } = await client.get<ApiDocument>('/openapi.json');
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, described]) => ({
      ...{ path, method: method.toUpperCase() },
      ...{ operationId: described.operationId, description: described.description },
      roles: described['x-roles'],
      required: described.parameters.filter((p) => p.in === 'query' && p.required).map((p) => p.name),
    })),
  );
}

/** What a question came to; `answer` is all that whoever asked could see of it, but for the hour. */
export interface Outcome {
  readonly status: number;
  readonly code: string | undefined;
  readonly answer: string;
}

/** Asks without a body, so that no change comes of it; what comes back of a success is not read. */
export async function ask(client: Client, method: string, address: string): Promise<Outcome> {
  const stop = new AbortController();
  const response = await client.raw(method, address, { signal: stop.signal });
  const { status } = response;
  if (response.ok || method === 'HEAD') {
    stop.abort();
    return { status, code: undefined, answer: String(status) };
  }
  const text = await response.text();
  const headers: string[] = [];
  response.headers.forEach((value, name) => {
    if (name !== 'date') headers.push(`${name}: ${value}`);
  });
  const { code } = JSON.parse(text) as { code: string };
  return { status, code, answer: JSON.stringify([status, headers, text]) };
}

/** So many questions at once that the server is busy and no queue grows long. */
export async function inBatches<T>(work: readonly (() => Promise<T>)[], size = 24): Promise<T[]> {
  const answers: T[] = [];
  for (let from = 0; from < work.length; from += size)
    answers.push(...(await Promise.all(work.slice(from, from + size).map((each) => each()))));
  return answers;
}
