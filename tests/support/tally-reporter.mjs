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
    const brokenParts = [...modules, ...suites].filter((part) => part.errors().length > 0).length;
    const tally = {
      passed: inState('passed').length,
      failed: inState('failed', 'pending').length + brokenParts + strayErrors.length,
      skipped: inState('skipped').map((test) => ({ name: nameOf(test), reason: test.result().note ?? '' })),
    };
    writeFileSync(process.env.ARAKABE_TALLY_FILE, JSON.stringify(tally));
  }
}

function nameOf(test) {
  return `${test.module.project.name}: ${test.fullName}`;
}
