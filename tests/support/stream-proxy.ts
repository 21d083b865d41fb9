import http, { type ClientRequest, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What stands between a browser and the server, and does not care for event streams. */
export type StreamFault =
  | 'none'
  /** Lets the connection open and gathers what comes; nothing ever arrives. */
  | 'gathers'
  /** Passes on the first words, then gathers. */
  | 'gathers-later'
  | 'refuses'
  /** Cuts every stream after `CUT_MS`. */
  | 'cuts';

export const CUT_MS = 1200;

export interface StreamProxy {
  readonly origin: string;
  fault: StreamFault;
  /** Requests by the last part of their path. */
  readonly counts: Record<string, number>;
  close(): Promise<void>;
}

/** A proxy of the test's own on the loopback; the host is passed on as the browser said it. */
export async function startStreamProxy(target: string): Promise<StreamProxy> {
  const { hostname, port } = new URL(target);
  const counts: Record<string, number> = {};
  const server = http.createServer((req, res) => {
    const path = req.url ?? '/';
    const name = path.split('?')[0]?.split('/').at(-1) ?? '';
    counts[name] = (counts[name] ?? 0) + 1;
    const isStream = name === 'events';
    if (isStream && proxy.fault === 'refuses') return void res.writeHead(502).end('bad gateway');
    const { method = 'GET', headers } = req;
    const onward = http.request({ hostname, port, path, method, headers, agent: false }, (answer) =>
      isStream ? passStream(answer, onward, res, proxy.fault) : pass(answer, res),
    );
    onward.on('error', () => res.destroy());
    res.on('close', () => onward.destroy());
    req.pipe(onward);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const proxy: StreamProxy = {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    fault: 'none',
    counts,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
  return proxy;
}

function pass(answer: IncomingMessage, res: ServerResponse): void {
  res.writeHead(answer.statusCode ?? 502, answer.headers);
  answer.pipe(res);
}

function passStream(
  answer: IncomingMessage,
  onward: ClientRequest,
  res: ServerResponse,
  fault: StreamFault,
): void {
  res.writeHead(answer.statusCode ?? 502, answer.headers);
  res.flushHeaders();
  let passed = 0;
  answer.on('data', (chunk: Buffer) => {
    const isHeld = fault === 'gathers' || (fault === 'gathers-later' && passed >= 2);
    if (!isHeld) res.write(chunk);
    passed += 1;
  });
  answer.on('end', () => res.end());
  answer.on('error', () => res.destroy());
  if (fault === 'cuts')
    setTimeout(() => {
      onward.destroy();
      res.destroy();
    }, CUT_MS);
}
