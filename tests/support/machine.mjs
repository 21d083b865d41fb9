import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ROOT } from '../../server/install.mjs';
import { startPrivatePostgres } from './private-postgres.mjs';

const NEEDS = {
  postgres: ['services', 'storage', 'http', 'browser', 'torture', 'bench', 'node24'],
  chromium: ['browser'],
  perl: ['reference', 'imaging'],
  openssl: ['reference', 'http'],
  embedded: ['services', 'storage', 'http', 'node24'],
  samples: ['reference', 'imaging', 'http', 'browser', 'bench'],
};

/**
 * Looks for what the chosen projects need beyond Node.js. Resolves to variables for the tests, what
 * is absent as `{ what, reason, required }`, and `stop` for what was started.
 */
export async function prepareMachine(projects, environment) {
  const needed = (name) => NEEDS[name].some((project) => projects.includes(project));
  const absent = [];
  if (needed('chromium') && !findChromium(environment))
    absent.push({
      what: 'the browser tests',
      reason: 'no Chromium was found (CHROMIUM_PATH names one)',
      required: true,
    });
  if (needed('perl') && spawnSync('perl', ['-v']).status !== 0)
    absent.push({ what: 'the comparison with ExifTool', reason: 'perl was not found', required: true });
  if (needed('openssl') && spawnSync('openssl', ['version']).status !== 0)
    absent.push({ what: 'the tests of time stamps', reason: 'openssl was not found', required: true });
  if (needed('samples') && !existsSync(path.join(ROOT, '..', 'shared', 'samples')))
    absent.push({
      what: 'the tests on the sample photos',
      reason: '../shared/samples is not there',
      required: existsSync(path.join(ROOT, '..', 'shared')),
    });
  const postgres = needed('postgres') ? await providePostgres(environment) : { variables: {} };
  if (postgres.missing)
    absent.push({ what: 'every test on a PostgreSQL server', reason: postgres.missing, required: true });
  const embedded = needed('embedded') ? await makeEmbedded() : { variables: {}, remove: () => {} };
  return {
    absent,
    variables: { ...postgres.variables, ...embedded.variables },
    stop: async () => {
      embedded.remove();
      await postgres.stop?.();
    },
  };
}

/** An embedded database in which nothing is, to be copied: making it takes seconds, and a run needs a hundred. */
async function makeEmbedded() {
  const { PGlite } = await import('@electric-sql/pglite');
  const folder = mkdtempSync(path.join(os.tmpdir(), 'arakabe-empty-'));
  const database = path.join(folder, 'database');
  await (await PGlite.create(database)).close();
  return {
    variables: { ARAKABE_TEST_EMBEDDED: database },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A server named by whoever runs the tests is used as it is. */
async function providePostgres(environment) {
  const given = environment.ARAKABE_TEST_POSTGRES;
  if (given) {
    console.log('Using the PostgreSQL of ARAKABE_TEST_POSTGRES.');
    return {};
  }
  const started = await startPrivatePostgres();
  if (started.missing) return started;
  console.log(`Started ${started.version} for these tests.`);
  return { variables: { ARAKABE_TEST_POSTGRES: started.url }, stop: started.stop };
}

function findChromium(environment) {
  const places = JSON.parse(readFileSync(new URL('./chromium-places.json', import.meta.url), 'utf8'));
  return [environment.CHROMIUM_PATH, ...places].find((file) => file && existsSync(file));
}
