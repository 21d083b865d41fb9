import type { Request } from 'express';
import type { AccountView } from '#domain/contract/views';
import type { Context } from '../services/context.ts';
import { Failure } from '../services/failure.ts';

export function headersOf(req: Request): Headers {
  const headers = new Headers();
  for (const name of ['cookie', 'authorization', 'user-agent', 'origin', 'host']) {
    const value = req.get(name);
    if (value !== undefined) headers.set(name, value);
  }
  return headers;
}

export async function identified(context: Context, req: Request): Promise<AccountView | null> {
  return (await context.accounts.identify(headersOf(req)))?.account ?? null;
}

/** A browser says where a request comes from; another site may change nothing here. Scripts say neither. */
export function assertSameSite(req: Request): void {
  if (req.get('authorization') !== undefined) return;
  const site = req.get('sec-fetch-site');
  if (site !== undefined && site !== 'same-origin' && site !== 'none')
    throw new Failure('cross-site-request');
  const origin = req.get('origin');
  if (origin !== undefined && originHost(origin) !== req.get('host')) throw new Failure('cross-site-request');
}

function originHost(origin: string): string | null {
  try {
    return new URL(origin).host;
  } catch {
    return null;
  }
}
