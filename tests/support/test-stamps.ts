import { execFile, spawnSync } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { promisify } from 'node:util';
import { temporaryFolder } from './record.ts';

const run = promisify(execFile);

/** Debian's package `openssl`; .ci/run installs it. */
export const HAS_OPENSSL = spawnSync('openssl', ['version']).status === 0;

type Answer = (query: Buffer) => Promise<{ status?: number; body: Buffer }>;

export interface TestStamps {
  readonly url: string;
  readonly caFile: string;
  /** What the service does with a request instead of stamping it, until told otherwise. */
  answer: Answer | null;
  /** The reply of OpenSSL to a query, by one of the certificates made here. */
  reply(query: Buffer, by?: 'service' | 'stranger'): Promise<Buffer>;
  /** A query as OpenSSL prints it. */
  read(query: Buffer): Promise<string>;
  /** Whether `openssl ts -verify` accepts a token as a stamp of these bytes. */
  verify(data: Uint8Array, token: Uint8Array): Promise<boolean>;
  close(): Promise<void>;
}

/**
 * A time-stamp service on loopback: OpenSSL's (`openssl ts -reply`), under a root made for this run. `stranger` signs
 * under another root.
 */
export async function startStamps(): Promise<TestStamps> {
  const { folder, remove } = await temporaryFolder();
  const file = (name: string) => path.join(folder, name);
  const openssl = (...args: string[]) => run('openssl', args, { cwd: folder });
  await writeFile(file('ts.cnf'), CONFIGURATION);
  for (const by of ['service', 'stranger']) await makeCertificates(openssl, by);
  let count = 0;
  const reply = async (query: Buffer, by: 'service' | 'stranger' = 'service') => {
    const name = `q${count++}`;
    await writeFile(file(name), query);
    await writeFile(file(`${name}.serial`), `0${count % 10}\n`);
    await openssl(
      ...['ts', '-reply', '-config', 'ts.cnf', '-section', 'tsa', '-queryfile', name, '-out', `${name}.tsr`],
      ...['-signer', `${by}.pem`, '-inkey', `${by}.key`, '-chain', `${by}-ca.pem`],
    );
    return readFile(file(`${name}.tsr`));
  };
  const stamps = { answer: null as Answer | null };
  const server = createServer((req, res) => {
    const parts: Buffer[] = [];
    req.on('data', (part: Buffer) => parts.push(part));
    req.on('end', () => {
      const query = Buffer.concat(parts);
      const answer: Answer = stamps.answer ?? (async (asked) => ({ body: await reply(asked) }));
      answer(query).then(
        ({ status = 200, body }) =>
          res.writeHead(status, { 'content-type': 'application/timestamp-reply' }).end(body),
        () => res.writeHead(500).end(),
      );
    });
  });
  await listening(server);
  return Object.assign(stamps, {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    caFile: file('service-ca.pem'),
    reply,
    read: async (query: Buffer) => {
      await writeFile(file('query'), query);
      return (await openssl('ts', '-query', '-in', 'query', '-text')).stdout;
    },
    verify: async (data: Uint8Array, token: Uint8Array) => {
      await writeFile(file('data'), data);
      await writeFile(file('token'), token);
      const args = ['-data', 'data', '-in', 'token', '-token_in', '-CAfile', 'service-ca.pem'];
      return openssl('ts', '-verify', ...args).then(
        ({ stdout, stderr }) => /Verification: OK/.test(stdout + stderr),
        () => false,
      );
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await remove();
    },
  });
}

async function makeCertificates(openssl: (...args: string[]) => Promise<unknown>, by: string): Promise<void> {
  const key = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes'];
  const root = ['-x509', '-days', '30', '-subj', `/CN=Test root of ${by}`, '-extensions', 'root'];
  await openssl(
    'req',
    '-config',
    'ts.cnf',
    ...key,
    ...root,
    '-keyout',
    `${by}-ca.key`,
    '-out',
    `${by}-ca.pem`,
  );
  const subject = ['-subj', `/O=Tests/CN=Test stamps of ${by}`];
  await openssl('req', '-config', 'ts.cnf', ...key, ...subject, '-keyout', `${by}.key`, '-out', `${by}.csr`);
  await openssl(
    ...['x509', '-req', '-in', `${by}.csr`, '-CA', `${by}-ca.pem`, '-CAkey', `${by}-ca.key`, '-days', '30'],
    ...['-set_serial', '7', '-extfile', 'ts.cnf', '-extensions', 'stamps', '-out', `${by}.pem`],
  );
}

function listening(server: Server): Promise<void> {
  return new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
}

/** openssl-ts(1), section "CONFIGURATION FILE OPTIONS". */
const CONFIGURATION = `
[req]
distinguished_name = name
prompt = no
[name]
CN = unused
[root]
basicConstraints = critical, CA:true
keyUsage = critical, keyCertSign, cRLSign
[stamps]
basicConstraints = CA:false
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, timeStamping
[tsa]
serial = serial
default_policy = 1.2.3.4.1
other_policies = 1.2.3.4.5
digests = sha256
signer_digest = sha256
accuracy = secs:1
ordering = no
tsa_name = yes
ess_cert_id_chain = no
ess_cert_id_alg = sha256
`;
