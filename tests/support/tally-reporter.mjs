import { writeFileSync } from 'node:fs';

/**
 * Writes what tests/run.mjs adds up. Vitest's own JSON drops the reason of a skipped test and does
 * not count a file that could not be loaded, a failing hook or a stray error; here each is a failure.
 */
export default class TallyReporter {
  onTestRunEnd(modules, strayErrors) {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const suites = modules.flatMap((module) => [...module.children.allSuites()]);
    const inState = (...states) => tests.filter((test) => states.includes(test.result().state));
    const failedTests = inState('failed', 'pending');
    const brokenParts = [...modules, ...suites].filter((part) => part.errors().length > 0);
    const tally = {
      passed: inState('passed').length,
      failed: failedTests.length + brokenParts.length + strayErrors.length,
      failures: [
        ...failedTests.map((test) => ({ name: nameOf(test), why: whyOf(test.result().errors ?? []) })),
        ...brokenParts.map((part) => ({
          name: part.fullName ?? part.relativeModuleId,
          why: whyOf(part.errors()),
        })),
        ...strayErrors.map((error) => ({ name: 'outside any test', why: whyOf([error]) })),
      ],
      skipped: inState('skipped').map((test) => ({ name: nameOf(test), reason: test.result().note ?? '' })),
    };
    writeFileSync(process.env.ARAKABE_TALLY_FILE, JSON.stringify(tally));
  }
}

function nameOf(test) {
  return `${test.module.project.name}: ${test.fullName}`;
}

const MOST_LINES_OF_A_REASON = 25;

function whyOf(errors) {
  return errors
    .map((error) => `${error.message ?? error}\n${error.diff ?? ''}\n${error.stack ?? ''}`)
    .join('\n')
    .split('\n')
    .filter((line) => line.trim())
    .slice(0, MOST_LINES_OF_A_REASON);
}
