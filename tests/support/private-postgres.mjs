import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';

const START_LIMIT_MS = 60_000;
const STOP_LIMIT_MS = 15_000;

/**
 * Starts a PostgreSQL of our own from installed programs: a new folder, a free loopback port, no
 * passwords, fsync on. Resolves to `{ url, version, stop }`, or to `{ missing }` with the reason.
 */
export async function startPrivatePostgres() {
  const bin = findPostgres();
  if (!bin) return { missing: 'no PostgreSQL programs (initdb, postgres) were found on this machine' };
  const owner = ownerOfServer();
  if (owner === null)
    return { missing: 'PostgreSQL refuses to run as root and there is no user named postgres' };
  const folder = mkdtempSync(path.join(os.tmpdir(), 'arakabe-postgres-'));
  if (owner.uid !== undefined) chownSync(folder, owner.uid, owner.gid);
  try {
    const version = initialise(bin, folder, owner);
    return { version, ...(await launch(bin, folder, owner)) };
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    return { missing: `PostgreSQL in ${bin} did not start: ${error.message}` };
  }
}

/** Newest of Debian's folders first, then what pg_config names, then the search path. */
export function findPostgres() {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const asked = spawnSync('pg_config', ['--bindir'], { encoding: 'utf8' });
  const candidates = [
    ...versions.map((version) => path.join(debian, version, 'bin')),
    ...(asked.status === 0 ? [asked.stdout.trim()] : []),
    ...(process.env.PATH ?? '').split(path.delimiter),
  ];
  return candidates.find((folder) =>
    ['initdb', 'postgres'].every((name) => existsSync(path.join(folder, name))),
  );
}

/** The user to run as: nothing special unless we are root. */
function ownerOfServer() {
  if (process.getuid?.() !== 0) return {};
  const ids = ['-u', '-g'].map((flag) => spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  if (ids.some((id) => id.status !== 0)) return null;
  const [uid, gid] = ids.map((id) => Number(id.stdout));
  return { uid, gid };
}

/** Sorts text by ICU as a usual server does: a query that leans on byte order must fail here, not on site. */
function initialise(bin, folder, owner) {
  const initdb = path.join(bin, 'initdb');
  const options = { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], ...owner };
  const icu = execFileSync(initdb, ['--help'], options).includes('--icu-locale')
    ? ['--locale-provider=icu', '--icu-locale=en-US']
    : [];
  const common = ['--auth=trust', '--username=arakabe', '--encoding=UTF8', '--locale=C.UTF-8', '--no-sync'];
  execFileSync(initdb, ['-D', path.join(folder, 'data'), ...common, ...icu], options);
  return execFileSync(path.join(bin, 'postgres'), ['--version'], options).trim();
}

async function launch(bin, folder, owner) {
  const port = await freePort();
  const settings = [
    `port=${port}`,
    'listen_addresses=127.0.0.1',
    `unix_socket_directories=${folder}`,
    'fsync=on',
    'max_connections=200',
  ];
  const server = spawn(
    path.join(bin, 'postgres'),
    ['-D', path.join(folder, 'data'), ...settings.flatMap((setting) => ['-c', setting])],
    { cwd: folder, stdio: ['ignore', 'ignore', 'pipe'], ...owner },
  );
  let log = '';
  server.stderr.setEncoding('utf8').on('data', (text) => (log = (log + text).slice(-4000)));
  const stop = stopper(server, folder);
  try {
    await untilReady(server, folder);
  } catch (error) {
    await stop();
    throw new Error(`${error.message}\n${log}`, { cause: error });
  }
  return { url: `postgres://arakabe@127.0.0.1:${port}/postgres`, stop };
}

async function freePort() {
  const probe = net.createServer();
  await new Promise((resolve, reject) => probe.once('error', reject).listen(0, '127.0.0.1', resolve));
  const { port } = probe.address();
  await new Promise((resolve) => probe.close(resolve));
  return port;
}

/** The server writes `ready` into the eighth line of postmaster.pid when it accepts connections. */
async function untilReady(server, folder) {
  const file = path.join(folder, 'data', 'postmaster.pid');
  for (const end = Date.now() + START_LIMIT_MS; Date.now() < end;) {
    if (server.exitCode !== null) throw new Error(`it ended with code ${server.exitCode}`);
    if (existsSync(file) && readFileSync(file, 'utf8').split('\n')[7]?.startsWith('ready')) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`it was not ready after ${START_LIMIT_MS / 1000} s`);
}

/** SIGINT is PostgreSQL's fast shutdown, SIGQUIT its immediate one. */
function stopper(server, folder) {
  const ended = new Promise((resolve) => server.once('close', resolve));
  // For an exit of this process that nobody awaited: no server may stay behind.
  const atExit = () => {
    server.kill('SIGQUIT');
    rmSync(folder, { recursive: true, force: true });
  };
  process.once('exit', atExit);
  return async () => {
    server.kill('SIGINT');
    const hurry = setTimeout(() => server.kill('SIGQUIT'), STOP_LIMIT_MS);
    await ended;
    clearTimeout(hurry);
    process.off('exit', atExit);
    rmSync(folder, { recursive: true, force: true });
  };
}
