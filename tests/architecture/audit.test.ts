import { execFile } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../support/project-files.ts';
import { temporaryFolder } from '../support/record.ts';

const run = promisify(execFile);
const GHSA = 'GHSA-aaaa-bbbb-cccc';

/** As `npm audit --json` writes it (npm 10, auditReportVersion 2). */
const reportOf = (name: string, severity: string) => ({
  auditReportVersion: 2,
  vulnerabilities: {
    [name]: {
      name,
      severity,
      via: [
        {
          source: 1,
          name,
          title: 'Reads what it should not',
          url: `https://github.com/advisories/${GHSA}`,
          severity,
          range: '<9.9.9',
        },
      ],
      effects: [],
    },
    above: { name: 'above', severity, via: [name], effects: [] },
  },
});

describe('the audit', () => {
  let folder: string;
  let remove: () => Promise<void>;
  beforeAll(async () => ({ folder, remove } = await temporaryFolder()));
  afterAll(() => remove());

  const audit = async (report: object, allowed: object[] = []) => {
    const [reportFile, allowedFile] = [path.join(folder, 'report.json'), path.join(folder, 'allowed.json')];
    await writeFile(reportFile, JSON.stringify(report));
    await writeFile(allowedFile, JSON.stringify(allowed));
    const program = path.join(ROOT, 'tests', 'support', 'audit.mjs');
    const args = [program, `--report=${reportFile}`, `--allowed=${allowedFile}`];
    return run(process.execPath, args).then(
      ({ stdout }) => ({ passed: true, said: stdout }),
      ({ stdout }: { stdout: string }) => ({ passed: false, said: stdout }),
    );
  };

  it.each(['express', 'react', 'body-parser'])(
    'fails for a high advisory on %s, which is shipped',
    async (name) => {
      const { passed, said } = await audit(reportOf(name, 'high'));
      expect(passed).toBe(false);
      expect(said).toContain(`high: ${name}`);
    },
  );

  it('passes for one on a tool, and for one that is not grave', async () => {
    expect(await audit(reportOf('vitest', 'critical'))).toMatchObject({ passed: true });
    const mild = await audit(reportOf('express', 'moderate'));
    expect(mild.passed).toBe(true);
    expect(mild.said).toContain('moderate: express');
  });

  it('passes for one that is allowed for a reason until a day, and not beyond', async () => {
    const report = reportOf('express', 'critical');
    const allowed = { advisory: GHSA, reason: 'We never call it.' };
    expect((await audit(report, [{ ...allowed, until: '9999-01-01' }])).passed).toBe(true);
    expect((await audit(report, [{ ...allowed, until: '2020-01-01' }])).passed).toBe(false);
    expect((await audit(report, [{ ...allowed, advisory: 'GHSA-x', until: '9999-01-01' }])).passed).toBe(
      false,
    );
  });

  it('says plainly that nobody answered, and does not fail for it', async () => {
    const { passed, said } = await audit({
      message: '405 Method Not Allowed - POST https://registry.example/x',
    });
    expect(passed).toBe(true);
    expect(said).toMatch(/^Nothing is known of advisories: the registry did not answer/);
    expect(said).not.toContain('registry.example');
  });
});
