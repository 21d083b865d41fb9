import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { TagView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { Client } from '../support/server.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { SCENARIOS } from './hand-cost/scenarios.ts';
import { prepare, tagAll } from './hand-cost/tag-all.ts';
import { PASSWORD, signIn } from './hands.ts';
import { KEEPER } from './site.ts';

describeInBrowser('what the hand does for 60 tags on 12 photos', () => {
  let app: App;
  let t: Words;
  let client: Client;
  beforeAll(async () => {
    [t, app] = await Promise.all([wordsOf('en'), startApp()]);
    client = new Client(app.server.origin);
    await client.post(`/links/${app.server.firstLink ?? ''}`, {
      name: 'Mio',
      email: KEEPER,
      password: PASSWORD,
    });
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  it.each(SCENARIOS.filter(({ always }) => always))(
    'is at most $reached presses and keys: $what',
    async (scenario) => {
      const site = await prepare(client, scenario);
      const page = await app.open();
      await page.goto('/');
      await signIn(page, t, KEEPER);
      const count = await tagAll(page, t, scenario, site);
      await page.context().close();
      expect(count).toBeLessThanOrEqual(scenario.reached);
      // Every tag really says what it was meant to say.
      const details = site.photos.map((photo) => client.get<{ allTags: TagView[] }>(`/photos/${photo}`));
      const marks = (await Promise.all(details)).map(({ allTags }) =>
        allTags.map(({ mark }) => mark as string).sort(),
      );
      expect(marks).toEqual(scenario.photos.map((members) => members.map(({ mark }) => mark).sort()));
    },
  );
});
