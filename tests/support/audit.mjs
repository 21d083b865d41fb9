import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { ROOT } from '../../server/install.mjs';
import { shippedPackages } from './shipped-packages.mjs';

/**
 * Asks the registry for advisories on what is shipped. Fails for a high or critical one that
 * audit-allowed.json does not name with a reason and a day until which that holds:
 * `{ "advisory": "GHSA-…", "reason": "…", "until": "2027-01-31" }`. Without an answer nothing is known, which is said
 * and fails nothing. `--report=file` and `--allowed=file` take an answer and a list from files.
 */
const GRAVE = ['high', 'critical'];
const PATIENCE_MS = 90_000;

const argument = (name) => process.argv.find((word) => word.startsWith(`--${name}=`))?.slice(name.length + 3);

function ask() {
  const file = argument('report');
  if (file) return JSON.parse(readFileSync(file, 'utf8'));
  const { stdout, error } = spawnSync('npm', ['audit', '--json'], {
    cwd: ROOT,
    encoding: 'utf8',
    timeout: PATIENCE_MS,
    maxBuffer: 64 * 1024 * 1024,
  });
  if (error) return { message: error.message };
  try {
    return JSON.parse(stdout);
  } catch {
    return { message: 'its answer is no JSON' };
  }
}

/** One line an advisory, each once, whatever number of packages it reaches. */
function advisoriesOf({ vulnerabilities }, shipped) {
  const found = new Map();
  for (const { name, via } of Object.values(vulnerabilities))
    for (const advisory of via)
      if (typeof advisory === 'object' && shipped.has(advisory.name ?? name))
        found.set(advisory.url ?? advisory.title, { name: advisory.name ?? name, ...advisory });
  return [...found.values()];
}

function isAllowed({ url = '' }, allowed, today) {
  return allowed.some(
    ({ advisory, reason, until }) => reason !== '' && url.endsWith(`/${advisory}`) && until >= today,
  );
}

const report = ask();
if (!report.vulnerabilities) {
  // The registry's own address is nobody's business in a log that is handed on.
  const why = String(report.message ?? report.error?.summary ?? 'no answer').replaceAll(
    /https?:\S+/gu,
    'the registry',
  );
  console.log(`Nothing is known of advisories: the registry did not answer the audit (${why}).`);
} else {
  const allowed = JSON.parse(
    readFileSync(argument('allowed') ?? new URL('./audit-allowed.json', import.meta.url), 'utf8'),
  );
  const today = new Date().toISOString().slice(0, 10);
  const shipped = shippedPackages();
  const advisories = advisoriesOf(report, shipped);
  const grave = advisories.filter((one) => GRAVE.includes(one.severity) && !isAllowed(one, allowed, today));
  for (const { severity, name, range, title, url } of advisories)
    console.log(`${severity}: ${name} ${range} ${title} ${url}`);
  console.log(
    `${shipped.size} packages are shipped; advisories: ${advisories.length}, high or critical and not allowed: ${grave.length}.`,
  );
  if (grave.length > 0) process.exitCode = 1;
}
