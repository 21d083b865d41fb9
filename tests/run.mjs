import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { buildCheck, buildClient, buildServer } from '../server/build.mjs';
import { PlainError, ROOT, assertNode, installMissing, runPlainly } from '../server/install.mjs';
import { prepareMachine } from './support/machine.mjs';
import { findOtherNode } from './support/other-node.mjs';
import { STEPS, runStep } from './support/steps.mjs';
import { endGroup, runVitest } from './support/vitest-run.mjs';

/** Projects that share one Vitest, and those that get one of their own. */
const TOGETHER = [
  'domain',
  'reference',
  'client',
  'services',
  'imaging',
  'render',
  'storage',
  'http',
  'architecture',
];
const TORTURE = 'torture';
const ALONE = ['browser', TORTURE];
/**
 * On a newer Node.js once more, for the sake of time, only what leans on it: both databases, and over HTTP
 * on PostgreSQL alone the whole job, files and what is damaged.
 */
const NODE_24 = 'node24';
const ON_NODE_24 = {
  storage: ['folder-lock', 'ledger', 'migrate', 'findings'],
  http: ['accounts', 'damaged', 'job', 'photos', 'schedule-files'],
};
const BESIDE_EACH_OTHER = [TORTURE, NODE_24];
const ON_REQUEST = ['bench'];
const STEP_NAMES = [...new Set(STEPS.map((step) => step.name))];

const total = { passed: 0, failed: 0, skipped: [], failures: [] };
/** Child processes that are running, to be ended with us. */
const children = new Set();

/** `[names…] [--kills=N] [--readme-pictures] [-- arguments of vitest]` */
function readArguments(argv) {
  const cut = argv.indexOf('--');
  const own = cut < 0 ? argv : argv.slice(0, cut);
  const names = own.filter((word) => !word.startsWith('--'));
  const kills = own.find((word) => word.startsWith('--kills='))?.slice('--kills='.length);
  const known = [...STEP_NAMES, ...TOGETHER, ...ALONE, NODE_24, ...ON_REQUEST];
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length > 0)
    throw new PlainError(`There is no ${unknown.join(', ')}; there is ${known.join(', ')}.`);
  const chosen = names.length > 0 ? names : known.filter((name) => !ON_REQUEST.includes(name));
  const keepsReadme = own.includes('--readme-pictures');
  return { chosen, kills, keepsReadme, args: cut < 0 ? [] : argv.slice(cut + 1) };
}

function add(tally) {
  total.passed += tally.passed;
  total.failed += tally.failed;
  total.skipped.push(...(tally.skipped ?? []));
  total.failures.push(...(tally.failures ?? []));
}

function holdsTests(project) {
  const folder = path.join(ROOT, 'tests', project);
  if (
    existsSync(folder) &&
    readdirSync(folder, { recursive: true }).some((name) => name.endsWith('.test.ts'))
  )
    return true;
  if (project === NODE_24) return true;
  console.log(`Nothing to run: tests/${project} holds no test.`);
  return false;
}

async function runProjects(projects, { kills, keepsReadme, args }) {
  const machine = await prepareMachine(projects, process.env);
  onEnd.push(machine.stop);
  for (const { what, reason } of machine.absent) console.log(`Could not run ${what}: ${reason}.`);
  const environment = {
    ...process.env,
    ...machine.variables,
    ...(kills === undefined ? {} : { ARAKABE_TEST_KILLS: kills }),
    ...(keepsReadme ? { ARAKABE_README_PICTURES: '1' } : {}),
  };
  const options = { environment, args, children };
  const run = async (group) => {
    if (group.length > 0 && !stoppedBy) add(await runVitest(group, options));
  };
  await run(projects.filter((name) => TOGETHER.includes(name)));
  const apart = projects.filter((name) => !TOGETHER.includes(name) && !BESIDE_EACH_OTHER.includes(name));
  for (const name of apart) await run([name]);
  // What torture does lasts as long as its servers live, mostly: the other core is free for the other Node.js.
  const isTwice = projects.includes(NODE_24) && !stoppedBy;
  const [absent] = await Promise.all([
    isTwice ? runOnOtherNode(options) : [],
    run(projects.filter((name) => name === TORTURE)),
  ]);
  return [...machine.absent, ...absent];
}

async function runOnOtherNode(options) {
  const { path: node, missing } = findOtherNode();
  const what = 'the server tests on Node.js 24';
  if (missing) return [{ what, reason: missing, required: !missing.startsWith('this is') }];
  console.log(`Running ${what}.`);
  for (const [project, names] of Object.entries(ON_NODE_24)) {
    const isHttp = project === 'http';
    const environment = { ...options.environment, ...(isHttp ? { ARAKABE_TEST_SKIP_EMBEDDED: '1' } : {}) };
    const files = options.args.length > 0 ? [] : names.map((name) => `tests/${project}/${name}.test.ts`);
    const args = [...files, ...options.args];
    if (!stoppedBy) add(await runVitest([project], { ...options, args, environment, node }));
  }
  return [];
}

/** On a developer's machine an absent program is said; where CI=true everything must be there. */
function judgeAbsent(absent) {
  for (const { what, reason, required } of absent) {
    const fails = process.env.CI === 'true' && required;
    console.log(`${fails ? 'FAILED, because CI=true: could' : 'Could'} not run ${what}: ${reason}.`);
    if (fails) total.failed += 1;
  }
}

const onEnd = [];
async function cleanUp() {
  for (const stop of onEnd.splice(0)) await stop();
}

/** The first signal ends what runs and comes to the sum in an orderly way, the second ends everything. */
let stoppedBy = null;
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'])
  process.on(signal, () => {
    if (stoppedBy) process.exit(1);
    stoppedBy = signal;
    for (const child of children) endGroup(child);
  });

/** What cannot be built is one failure; the rest is still worth knowing. */
async function buildAll() {
  for (const build of [buildServer, buildClient, buildCheck])
    try {
      await build();
    } catch (error) {
      if (!(error instanceof PlainError)) throw error;
      console.log(`✗ ${error.message}`);
      total.failed += 1;
    }
}

/** Two at a time, each on a core of its own; types of the domain come before what is built on them. */
async function runSteps(steps) {
  const left = [...steps];
  const run = async (step) =>
    add((await runStep(step, children)) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });
  const work = async () => {
    for (let step = left.shift(); step && !stoppedBy; step = left.shift()) await run(step);
  };
  if (left[0]?.isFirst) await run(left.shift());
  await Promise.all([work(), work()]);
}

async function runChosen(options) {
  await buildAll();
  await runSteps(STEPS.filter(({ name }) => options.chosen.includes(name)));
  const projects = options.chosen.filter((name) => !STEP_NAMES.includes(name)).filter(holdsTests);
  const absent = projects.length > 0 && !stoppedBy ? await runProjects(projects, options) : [];
  for (const { name, reason } of total.skipped) console.log(`Skipped: ${name}${reason && ` (${reason})`}`);
  judgeAbsent(absent);
}

/** Once more at the end, where it is found: the run of all tests prints thousands of lines. */
function repeatFailures() {
  for (const { name, why } of total.failures)
    console.log(`✗ ${name}\n${why.map((line) => `    ${line}`).join('\n')}`);
}

await runPlainly(async () => {
  const options = readArguments(process.argv.slice(2));
  try {
    assertNode();
    installMissing();
    await runChosen(options);
  } catch (error) {
    total.failed += 1;
    console.log(error instanceof PlainError ? error.message : error.stack);
  } finally {
    await cleanUp();
  }
  repeatFailures();
  if (stoppedBy) console.log(`Stopped by ${stoppedBy} before the end.`);
  console.log(`${total.passed} passed, ${total.failed} failed`);
  if (total.failed > 0 || stoppedBy) process.exitCode = 1;
});
