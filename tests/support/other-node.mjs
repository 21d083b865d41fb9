import { spawnSync } from 'node:child_process';

const WANTED = 24;

/** The newer Node.js that the server must also run on, from the npm registry or its cache: `{ path }` or `{ missing }`. */
export function findOtherNode() {
  if (Number(process.versions.node.split('.')[0]) >= WANTED)
    return { missing: `this is Node.js ${process.version}` };
  const found = spawnSync('npx', ['-y', `node@${WANTED}`, '-p', 'process.execPath'], {
    encoding: 'utf8',
    timeout: 180_000,
  });
  const path = found.stdout?.trim().split('\n').at(-1);
  return found.status === 0 && path
    ? { path }
    : { missing: `node@${WANTED} cannot be had from the npm registry` };
}
