import { it } from 'vitest';
import { wordsOf } from '../client/words.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, startApp } from '../browser/app.ts';
import { SCENARIOS } from '../browser/hand-cost/scenarios.ts';
import { prepare, tagAll } from '../browser/hand-cost/tag-all.ts';
import { PASSWORD, signIn } from '../browser/hands.ts';
import { KEEPER } from '../browser/site.ts';
import { sayTable, type BenchRow } from './say-table.ts';

describeInBrowser('tagging 60 members in 12 photos', () => {
  it('counts presses of the pointer and keys', async () => {
    const [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    const client = new Client(app.server.origin);
    const person = { name: 'Mio', email: KEEPER, password: PASSWORD };
    await client.post(`/links/${app.server.firstLink ?? ''}`, person);
    const rows: BenchRow[] = [];
    for (const scenario of SCENARIOS) {
      const site = await prepare(client, scenario);
      const page = await app.open();
      await page.goto('/');
      await signIn(page, t, KEEPER);
      const count = await tagAll(page, t, scenario, site);
      await page.context().close();
      rows.push({
        what: scenario.what,
        measured: `${count}, ${(count / 60).toFixed(2)} a tag`,
        bare: '60 regions drawn and nothing said',
        ratio: (count / 60).toFixed(2),
      });
    }
    sayTable('60 members in 12 photos, presses and keys', rows);
    await app.close();
  });
});
