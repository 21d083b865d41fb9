import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** One project a folder of tests/; the slow ones work with real processes, a real database, a real browser. */
const TIMEOUTS: Record<string, number> = {
  domain: 10_000,
  client: 20_000,
  architecture: 60_000,
  reference: 60_000,
  services: 30_000,
  imaging: 60_000,
  storage: 60_000,
  http: 60_000,
  browser: 300_000,
  torture: 1_200_000,
  render: 60_000,
  bench: 1_200_000,
};
const ONE_FILE_AT_A_TIME = ['browser', 'torture', 'bench'];
/** They leave nothing behind in a module, so that what files import need be read once by each worker. */
const SHARING_MODULES = ['domain', 'imaging', 'storage', 'http', 'browser'];

export default defineConfig({
  test: {
    // Half of the time a test waits for a database or a process; by default one of two cores would stand idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: Object.entries(TIMEOUTS).map(([name, timeout]) => ({
      test: {
        name,
        include: [`tests/${name}/**/*.test.ts`],
        pool: 'forks' as const,
        setupFiles: name === 'browser' ? ['tests/browser/where-it-was.ts'] : [],
        testTimeout: timeout,
        hookTimeout: Math.max(timeout, 60_000),
        isolate: !SHARING_MODULES.includes(name),
        fileParallelism: !ONE_FILE_AT_A_TIME.includes(name),
      },
    })),
  },
});
