/** Who may import whom: domain ← services ← http; storage, imaging and paper implement what services declare. */

const ROOMS = { domain: '^server/domain/', services: '^server/services/' };
/** The files that stand directly under server/: they put the parts together. */
const COMPOSITION = '^server/(?!config[.]|listening-origin[.]|package-root[.])[^/]+[.]ts$';
/** A package by name, wherever it is installed. */
const packages = (...names) => `node_modules/(${names.join('|')})/`;
/** Node.js modules without a machine behind them. */
const PURE_CORE = '^(node:)?(crypto|path|stream|stream/promises|buffer|events|url|util|zlib|async_hooks)$';
const TYPE_ONLY = ['type-only'];

const forbid = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

module.exports = {
  forbidden: [
    forbid('no-cycle', 'A cycle is one idea in several files.', {}, { circular: true }),
    forbid('not-found', 'The import leads nowhere.', {}, { couldNotResolve: true }),
    forbid(
      'domain-is-pure',
      'The domain imports itself, zod, temporal-polyfill and pure mathematics: geodesics, the magnetic field.',
      { path: ROOMS.domain },
      {
        pathNot: [
          ROOMS.domain,
          packages(
            'zod',
            'temporal-polyfill',
            'temporal-spec',
            '@js-temporal',
            'geographiclib-geodesic',
            'geomagnetism',
          ),
        ],
      },
    ),
    forbid(
      'verifier-is-a-stranger',
      'Whoever checks the writer shares only the encoder with it.',
      { path: '^server/domain/verify/' },
      { path: '.', pathNot: '^server/domain/(verify/|ledger/canonical-json[.]ts$)' },
    ),
    forbid(
      'services-decide-only',
      'Services use the domain and pure libraries; what touches the machine is handed to them by a port.',
      { path: ROOMS.services },
      {
        dependencyTypesNot: TYPE_ONLY,
        pathNot: [
          ROOMS.domain,
          ROOMS.services,
          PURE_CORE,
          packages(
            'zod',
            'temporal-polyfill',
            'csv-parse',
            'csv-stringify',
            'read-excel-file',
            'fflate',
            'client-zip',
            'ical-generator',
          ),
        ],
      },
    ),
    forbid(
      'services-do-not-know-http',
      'Not even its types.',
      { path: ROOMS.services },
      { path: ['^server/http/', packages('express', 'multer', '@types/express', '@types/multer')] },
    ),
    forbid(
      'http-is-the-outside',
      'Only the composition imports http.',
      { path: '^(server|client)/', pathNot: ['^server/http/', COMPOSITION] },
      { path: '^server/http/' },
    ),
    forbid(
      'storage-and-imaging-are-strangers',
      'Each implements ports and knows nothing of the other.',
      { path: '^server/(storage|imaging|paper|stamping)/' },
      { path: '^server/(storage|imaging|paper|stamping)/', pathNot: '^server/$1/' },
    ),
    forbid(
      'composition-is-the-top',
      'Nobody imports the composition.',
      { path: '^(server|client)/', pathNot: COMPOSITION },
      { path: COMPOSITION },
    ),
    forbid(
      'demo-is-a-room-of-its-own',
      'What invents pictures knows the domain, sharp and threads; the program itself never runs it.',
      { path: '^server/demo/', pathNot: '^server/demo/site/' },
      {
        pathNot: [
          ROOMS.domain,
          '^server/demo/',
          packages('sharp'),
          '^(node:)?(worker_threads|fs/promises|path|url|util)$',
        ],
      },
    ),
    forbid(
      'demo-uses-the-api',
      'What fills the demo knows the program by its API over HTTP, as anybody does, and this machine.',
      { path: '^server/demo/site/' },
      { path: '.', pathNot: [ROOMS.domain, '^server/demo/'], dependencyTypesNot: ['core'] },
    ),
    forbid(
      'nobody-needs-the-demo',
      'Only its commands and its tests.',
      { path: '^(server|client)/', pathNot: ['^server/demo/', '^server/(start-)?demo[.]ts$'] },
      { path: '^server/demo/' },
    ),
    forbid(
      'configuration-is-handed-on',
      'Only the composition reads the configuration; others may know its types.',
      { path: '^server/', pathNot: COMPOSITION },
      { path: '^server/config[.]ts$', dependencyTypesNot: TYPE_ONLY },
    ),
    forbid(
      'client-sees-the-domain-only',
      'The client imports itself, the domain and packages for browsers.',
      { path: '^client/', pathNot: '^client/vite[.]config[.]ts$' },
      {
        path: [
          '^(server|tests)/',
          packages('pg', 'pg-boss', 'kysely', 'express', 'sharp', '@electric-sql', 'pino'),
        ],
        pathNot: ROOMS.domain,
      },
    ),
    forbid(
      'no-node-in-the-browser',
      'Browsers have no Node.js modules.',
      { path: '^client/', pathNot: '^client/vite[.]config[.]ts$' },
      { dependencyTypes: ['core'] },
    ),
    forbid(
      'server-stands-alone',
      'The server imports neither client nor tests.',
      { path: '^server/' },
      { path: '^(client|tests)/' },
    ),
    forbid(
      'server-needs-real-dependencies',
      'What the running server imports stands under dependencies, not devDependencies.',
      { path: '^server/.*[.]ts$' },
      { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: TYPE_ONLY },
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: ['^dist/', '^data/', '^tests/fixtures/'] },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json', '.d.ts'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
