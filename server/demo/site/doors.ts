import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Who } from '../story/people.ts';
import type { Crew } from './carry-out.ts';

interface Door {
  readonly who: Who;
  /** What whoever goes in may want to look at first. */
  readonly says: string;
}

export const DOORS: readonly Door[] = [
  { who: 'carpenter', says: 'what closes tomorrow, and which members have no record yet' },
  { who: 'inspector', says: 'the west wall waits to be reviewed and released, or refused' },
  { who: 'builder', says: 'the journal of the build, photo by photo' },
];

export interface Doors {
  readonly port: number;
  close(): Promise<void>;
}

/** Addresses that sign a browser in and send it on. A cookie is for a host, whatever the port (RFC 6265 §8.5). */
export async function openDoors(crew: Crew, leadsTo: string): Promise<Doors> {
  const server = createServer((req, res) => {
    const door = DOORS.find(({ who }) => req.url === `/${who}`);
    res.setHeader('cache-control', 'no-store');
    res.setHeader('content-type', 'text/html; charset=utf-8');
    if (door) res.writeHead(303, { location: leadsTo, 'set-cookie': crew[door.who].signedIn }).end();
    else res.writeHead(req.url === '/' ? 200 : 404).end(PAGE);
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

const PAGE = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Arakabe</title>
<h1>谷の舟小屋</h1>
<p>An invented boathouse in the fifth week of its build. Go in as</p>
<ul>
${DOORS.map(({ who, says }) => `<li><a href="/${who}">${who}</a>: ${says}</li>`).join('\n')}
</ul>
</html>
`;
