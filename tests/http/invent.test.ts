import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { HouseView } from '#domain/contract/views';
import { ROOT } from '../support/project-files.ts';
import { temporaryFolder } from '../support/record.ts';
import { Client, OWNER } from '../support/server.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';

/** `npm run invent -- <word>` on this folder: its exit code and what it says to the person. */
async function invent(dataFolder: string, word: string, more = {}): Promise<{ code: number; said: string }> {
  const env = { PATH: process.env['PATH'], HOME: process.env['HOME'], ARAKABE_DATA: dataFolder, ...more };
  const run = promisify(execFile)(process.execPath, [path.join(ROOT, 'server/start.mjs'), 'invent', word], {
    cwd: ROOT,
    env,
  });
  return run.then(
    ({ stdout }) => ({ code: 0, said: stdout }),
    ({ code, stderr }: { code: number; stderr: string }) => ({ code, said: stderr }),
  );
}

it('makes an invented house in the record, or says in a sentence why not', { timeout: 180_000 }, async () => {
  const { folder, remove } = await temporaryFolder();
  expect(await invent(folder, 'castle')).toEqual({
    ...{ code: 1, said: 'Say which house: npm run invent -- boathouse | three-bay | four-hundred\n' },
  });
  expect(await invent(folder, 'three-bay')).toEqual({
    code: 1,
    said:
      'There is no account yet, and a house needs one that keeps its record. Run npm start, open the link that ' +
      'it prints and make your account; then stop it and run npm run invent -- three-bay again.\n',
  });
  const place: Place = { dataFolder: folder, database: { kind: 'embedded', folder } };
  let server = await ServerProcess.start(place);
  const refused = await invent(folder, 'three-bay');
  expect(refused.code).toBe(1);
  expect(refused.said).toContain('Stop it first');
  await server.stop();
  expect((await invent(folder, 'three-bay')).said).toMatch(
    /The house is at \/houses\/\S{36}\nPut before it the address that npm start prints \(with these settings http:\/\/127\.0\.0\.1:4310\)/,
  );
  const named = { ARAKABE_URL: 'https://record.example.org' };
  expect((await invent(folder, 'four-hundred', named)).said).toMatch(
    /The house is at https:\/\/record\.example\.org\/houses\/\S{36}\n$/,
  );
  server = await ServerProcess.start(place);
  const owner = new Client(server.origin);
  await owner.post('/session', OWNER);
  const { houses } = await owner.get<{ houses: HouseView[] }>('/houses');
  const reports = new Map<string, ClosingReportView>();
  for (const { id, name } of houses)
    reports.set(name, await owner.get<ClosingReportView>(`/houses/${id}/closing-report`));
  // Added up by hand: roofs 9 + 9, walls 4 + 9 + 3 + 9, floor 9, ceiling 13.
  expect(reports.get('三間の納屋')?.counts).toMatchObject({ hidden: 65, gaps: 65 });
  // Roofs 17 + 17; below: walls 15 + 15 + 20 + 20 + 3 + 3, floor 45, ceiling 16; above: 14 + 14 + 20 + 20 + 3 + 3, 20, 16.
  expect(reports.get('谷の大きな家')?.counts).toMatchObject({ hidden: 281, gaps: 281 });
  await server.stop();
  await remove();
});
