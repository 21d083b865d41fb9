import path from 'node:path';
import { expect, it } from 'vitest';
import { ConfigError, readConfig, readTerminal } from '../../server/config.ts';

it('needs nothing', () => {
  expect(readConfig({})).toEqual({
    host: '127.0.0.1',
    port: 4310,
    origin: null,
    proxies: [],
    dataFolder: path.resolve('data'),
    database: { kind: 'embedded', folder: path.resolve('data/database') },
    role: 'all',
    logLevel: 'info',
    timestamps: null,
    owner: null,
  });
});

it('takes a PostgreSQL with no other change, and empty values as absent', () => {
  const config = readConfig({
    DATABASE_URL: 'postgres://u@h/d',
    PORT: '',
    ARAKABE_ROLE: 'worker',
    ARAKABE_PROXY: 'uniquelocal, 203.0.113.0/24',
    ARAKABE_URL: 'https://frame.example.org/',
  });
  expect(config).toMatchObject({
    database: { kind: 'server', url: 'postgres://u@h/d' },
    port: 4310,
    role: 'worker',
    origin: 'https://frame.example.org',
    proxies: ['uniquelocal', '203.0.113.0/24'],
  });
});

it('says everything that is wrong at once', () => {
  const wrong = {
    PORT: 'eighty',
    DATABASE_URL: 'mysql://x',
    ARAKABE_ROLE: 'boss',
    ARAKABE_PROXY: 'everybody',
    ARAKABE_OWNER_PASSWORD: 'short',
  };
  const sentences = problemsOf(wrong);
  for (const name of Object.keys(wrong))
    expect(
      sentences.some((sentence) => sentence.startsWith(name)),
      name,
    ).toBe(true);
});

it.each([
  [{ ARAKABE_OWNER_EMAIL: 'owner@example.org' }, /belong together/],
  [{ ARAKABE_TIMESTAMP_CA: 'roots.pem' }, /set ARAKABE_TIMESTAMP_URL/],
  [{ ARAKABE_ROLE: 'worker' }, /needs DATABASE_URL/],
  [{ HOST: 'a b' }, /^HOST: “a b” is no name or address/],
  [{ HOST: '[::1]' }, /^HOST: “\[::1\]” is no name or address/],
])('refuses what contradicts itself: %o', (environment, sentence) => {
  expect(problemsOf(environment).join()).toMatch(sentence);
});

const PORT = 'PORT: must be a whole number from 0 to 65535, in digits';
const ADDRESS = 'must be an address that begins with https:// or http://';
it.each([
  [{ PORT: 'eighty' }, PORT],
  [{ PORT: '0x10' }, PORT],
  [{ PORT: '1e3' }, PORT],
  [{ PORT: '65536' }, PORT],
  [{ PORT: '-1' }, PORT],
  [{ ARAKABE_URL: 'frame.example.org' }, `ARAKABE_URL: ${ADDRESS}`],
  [{ ARAKABE_URL: 'ftp://frame.example.org' }, `ARAKABE_URL: ${ADDRESS}`],
  [{ ARAKABE_TIMESTAMP_URL: 'stamps' }, `ARAKABE_TIMESTAMP_URL: ${ADDRESS}`],
  [{ ARAKABE_ROLE: 'boss' }, 'ARAKABE_ROLE: must be all, web or worker'],
  [{ ARAKABE_LOG: 'loud' }, 'ARAKABE_LOG: must be silent, error, warn, info or debug'],
])('says in its own words what a value must be: %o', (environment, sentence) => {
  expect(problemsOf(environment)).toEqual([sentence]);
});

it.each([
  ['0', 0],
  ['80', 80],
  ['65535', 65_535],
])('takes the port %s', (text, port) => {
  expect(readConfig({ PORT: text }).port).toBe(port);
});

function problemsOf(environment: NodeJS.ProcessEnv): readonly string[] {
  try {
    readConfig(environment);
    return [];
  } catch (error) {
    if (error instanceof ConfigError) return error.sentences;
    throw error;
  }
}

it('knows of a terminal which port is wished, and that no robot watches', () => {
  expect(readTerminal({})).toMatchObject({ port: null });
  expect(readTerminal({ PORT: '' })).toMatchObject({ port: null });
  expect(readTerminal({ PORT: '0' })).toMatchObject({ port: null });
  expect(readTerminal({ PORT: '4400', CI: 'true' })).toEqual({ port: 4400, isWatched: false });
  expect(() => readTerminal({ PORT: 'harbour' })).toThrow(ConfigError);
});
