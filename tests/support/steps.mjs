import { spawn } from 'node:child_process';
import path from 'node:path';
import { ROOT } from '../../server/install.mjs';
import { IN_OWN_GROUP, finished } from './vitest-run.mjs';

const tool = (file, ...args) => [process.execPath, path.join(ROOT, 'node_modules', file), ...args];
const tsc = (...args) => tool('typescript/bin/tsc', ...args);

/**
 * The checks that are one command each, by the name that `npm test -- <name>` takes; the long ones first, since
 * two run at a time. `isFirst`: others build on it.
 */
export const STEPS = [
  { name: 'types', title: 'types of the domain', command: tsc('-b', 'server/domain'), isFirst: true },
  { name: 'lint', title: 'lint (eslint)', command: tool('eslint/bin/eslint.js', '.') },
  { name: 'types', title: 'types of the tests', command: tsc('-p', 'tests', '--noEmit') },
  { name: 'types', title: 'types of the client', command: tsc('-p', 'client', '--noEmit') },
  { name: 'types', title: 'types of the server', command: tsc('-p', 'server', '--noEmit') },
  {
    name: 'format',
    title: 'formatting (prettier)',
    command: tool('prettier/bin/prettier.cjs', '--check', '.'),
  },
  {
    name: 'imports',
    title: 'import direction (dependency-cruiser)',
    command: tool(
      'dependency-cruiser/bin/dependency-cruise.mjs',
      ...['--config', '.dependency-cruiser.cjs', 'server', 'client', 'tests'],
    ),
  },
  {
    name: 'audit',
    title: 'advisories on what is shipped (npm audit)',
    command: [process.execPath, path.join(ROOT, 'tests', 'support', 'audit.mjs')],
    // Also when it passes: that nothing was found and that nobody answered are not the same.
    isHeard: true,
  },
];

/** Runs one step; resolves to whether it passed. What it printed is shown when it failed, or where it always has something to say. */
export async function runStep(step, children) {
  const started = performance.now();
  const [program, ...args] = step.command;
  const child = spawn(program, args, { ...IN_OWN_GROUP, cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding('utf8').on('data', (text) => (output += text));
  const passed = (await finished(child, children)) === 0;
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${passed ? '✓' : '✗'} ${step.title} (${seconds} s)`);
  if (!passed || step.isHeard) console.log(output.trimEnd());
  return passed;
}
