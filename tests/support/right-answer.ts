import { randomUUID } from 'node:crypto';
import type { Operation, Outcome } from './ask-api.ts';
import type { Asker } from './askers.ts';
import type { Who } from './who-may.ts';

/** `nothing`: word for word the answer about a thing that does not exist. */
export type Expected = 'passes' | 'not-signed-in' | 'not-permitted' | 'nothing';

/** What required parameters of a reading say. */
const QUERY: Readonly<Record<string, string>> = {
  sha256: 'a'.repeat(64),
  xywh: 'percent:10,10,30,30',
  region: 'percent:10,10,30,30',
  before: '2026-04-09',
};
/** What an operation is asked with that would do something even without a body, so that it does not. */
const HARMLESS: Readonly<Record<string, { mark?: string; query?: string }>> = {
  withdrawTag: { query: `reason=${'x'.repeat(1001)}` },
  endGuest: { query: `reason=${'x'.repeat(1001)}` },
  endSessions: { query: 'tokens=perhaps' },
  deleteMember: { mark: encodeURIComponent('ぬ九') },
};
const NOBODY = randomUUID();

export function expectedOf(who: Who, { role }: Asker, isForeign: boolean): Expected {
  if (who === 'anyone') return 'passes';
  if (role === undefined) return 'not-signed-in';
  if (isForeign) return 'nothing';
  if (who === 'account') return 'passes';
  if (role === null) return 'nothing';
  return who.includes(role) ? 'passes' : 'not-permitted';
}

export function isRight(
  { status, code, answer }: Outcome,
  expected: Expected,
  method: string,
  nothing: string | undefined,
): boolean {
  if (expected === 'nothing') return status === 404 && answer === nothing;
  if (expected !== 'passes') return code === expected;
  if (method === 'GET') return status < 300;
  return status < 500 && ![401, 403].includes(status) && !(status === 404 && answer === nothing);
}

/** The address of an operation on these things. Changes are asked without what they need, and so refused. */
export function addressOf(
  { operationId, method, path, required }: Operation,
  things: Readonly<Record<string, string>>,
): string {
  const { mark, query = '' } = HARMLESS[operationId] ?? {};
  const all: Readonly<Record<string, string>> = { person: NOBODY, ...things, ...(mark && { mark }) };
  const address = path.replace(/\{(\w+)\}/g, (_, name: string) => {
    const thing = all[name];
    if (thing === undefined)
      throw new Error(`${operationId} names a {${name}}: make one in tests/support/furnished-house.ts.`);
    return thing;
  });
  if (method !== 'GET') return query ? `${address}?${query}` : address;
  const said = required.map((name) => `${name}=${QUERY[name] ?? ''}`);
  return said.length > 0 ? `${address}?${said.join('&')}` : address;
}

export function complaint(
  { operationId }: Operation,
  { name }: Asker,
  [expected, { status, code }]: [Expected, Outcome],
  isForeign: boolean,
): string {
  const about = isForeign ? ' about a foreign house' : '';
  return `${operationId}, asked${about} by ${name}: should be ${expected}, is ${status} ${code ?? ''}`.trim();
}
