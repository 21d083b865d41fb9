import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ROOT } from '../../server/install.mjs';

const VITEST = path.join(ROOT, 'node_modules', 'vitest', 'vitest.mjs');

/** So that ending it ends its workers and their servers too; they would go on otherwise. */
export const IN_OWN_GROUP = { detached: process.platform !== 'win32' };

export function endGroup(child) {
  try {
    if (IN_OWN_GROUP.detached) process.kill(-child.pid, 'SIGTERM');
    else child.kill();
  } catch {
    // It ended by itself in this very moment.
  }
}

/** Runs projects in one Vitest; resolves to their tally, in which a crash of Vitest itself is one failure. */
export async function runVitest(projects, { environment, args, children, node = process.execPath }) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'arakabe-tally-'));
  const file = path.join(folder, 'tally.json');
  const reporter = path.join(ROOT, 'tests', 'support', 'tally-reporter.mjs');
  const status = await finished(
    spawn(
      node,
      [
        VITEST,
        'run',
        ...projects.flatMap((name) => ['--project', name]),
        '--reporter=default',
        `--reporter=${reporter}`,
        ...args,
      ],
      {
        ...IN_OWN_GROUP,
        cwd: ROOT,
        stdio: ['ignore', 'inherit', 'inherit'],
        env: { ...environment, ARAKABE_TALLY_FILE: file },
      },
    ),
    children,
  );
  const tally = readTally(file);
  rmSync(folder, { recursive: true, force: true });
  if (status !== 0 && tally.failed === 0) return { ...tally, failed: 1 };
  return tally;
}

function readTally(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { passed: 0, failed: 1, skipped: [] };
  }
}

/** Resolves to the exit code (null after a signal) and keeps the child in `children` while it lives. */
export function finished(child, children) {
  children.add(child);
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve(code));
  }).finally(() => children.delete(child));
}
