import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import type { ProtectionView } from '#domain/contract/protection';
import type { CoveringView, HouseView, PersonInHouseView, UploadOutcome } from '#domain/contract/views';
import { threeBayHouse } from '#domain/frame/invented/three-bay';
import type { Words } from '../../client/i18n/words.ts';
import { releaseAsSeen } from '../support/release.ts';
import { Client } from '../support/server.ts';
import { addAlike } from './alike-photos.ts';
import { chooseTool, dragBox, markField, pictureDrawn, stageOf } from './bench-hands.ts';
import { answerButton, button, chooseFiles, field, link, PASSWORD, tick } from './hands.ts';
import { houseScreens } from './screens.ts';
import { damagedPhoto, doubtfulPhoto } from './site-photos.ts';
import { KEEPER, type Site } from './site.ts';

/** A screen, or one moment of it. */
export interface View {
  readonly name: string;
  readonly address: string;
  /** What brings the moment about, once the screen stands. */
  readonly enter?: (page: Page, t: Words) => Promise<unknown>;
  readonly isSignedOut?: boolean;
}

/** A covering that closed with losses, a person who never came, a house with nothing in it. */
export interface MoreThings {
  readonly closed: string;
  /** The review of a covering that is ready for it. */
  readonly review: string;
  readonly link: string;
  readonly empty: string;
  /** A photo that others are nearly the same as, with tags that cannot be read. */
  readonly alike: string;
  /** Bench of a photo whose camera data could not all be read. */
  readonly doubtful: string;
  /** Sheets that lie there. */
  readonly sheets: string;
  /** A house with a grid, and a wall in it. */
  readonly framed: string;
  readonly wall: string;
  /** A covering that was released, with one member accepted without a record. */
  readonly release: string;
  /** What can be read without an account, and the link for a new password. */
  readonly guests: { readonly covering: string; readonly member: string };
  readonly newPassword: string;
}

export async function prepareMore(site: Site): Promise<MoreThings> {
  const { client, things } = site;
  const { id: closed } = await client.post<CoveringView>(`${things.house}/coverings`, {
    id: randomUUID(),
    name: 'Loft floor',
    kind: 'floor',
    plannedDay: '2026-03-02',
    hides: ['い一', 'い三'].map((mark) => ({ mark, least: 'raised' })),
  });
  await client.post(`/coverings/${closed}/close`, {
    withoutRelease: 'Nobody inspects this house.',
    closedAt: null,
    note: 'Boards nailed down.',
  });
  const review = await addReady(site);
  const sheets = await layOver(site);
  const person = { email: 'ren@example.org', role: 'carpenter' };
  const { link } = await client.post<{ link: string }>(`${things.house}/people`, person);
  const house = { id: randomUUID(), name: 'Tea house', zone: 'Asia/Tokyo' };
  const { id } = await client.post<HouseView>('/houses', house);
  await client.post('/tokens', { id: randomUUID(), name: 'photos from the office' });
  const { name: fileName, buffer } = await doubtfulPhoto();
  const { results } = await client.upload<{ results: UploadOutcome[] }>(
    things.house.split('/').at(-1) ?? '',
    [{ name: fileName, bytes: buffer }],
  );
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error('The doubtful photo was refused.');
  const doubtful = `${things.house}/photos/${outcome.photo.id}`;
  return {
    ...{ closed, review, link, empty: `/houses/${id}`, alike: await addAlike(site), doubtful, sheets },
    ...(await addFramed(site)),
    release: await releaseOne(site),
    ...{ guests: await admitGuests(site), newPassword: await losePassword(site) },
  };
}

/** Of the covering and of the member that the other screens show. */
async function admitGuests({
  client,
  things: { house, covering, mark },
}: Site): Promise<MoreThings['guests']> {
  const admit = async (shows: object, label: string) => {
    const guest = { id: randomUUID(), shows, label };
    return `/guest/${(await client.post<{ secret: string }>(`${house}/guests`, guest)).secret}`;
  };
  return { covering: await admit({ covering }, 'Family Ota'), member: await admit({ mark }, '太田様') };
}

/** Of somebody who joined this house alone. */
async function losePassword({ client, origin, things: { house } }: Site): Promise<string> {
  const email = 'aki@example.org';
  const { link } = await client.post<{ link: string }>(`${house}/people`, { email, role: 'builder' });
  await new Client(origin).post(`/links/${link}`, { name: 'Aki', email, password: PASSWORD });
  const { people } = await client.get<{ people: PersonInHouseView[] }>(`${house}/people`);
  const id = people.find((person) => person.email === email)?.id ?? '';
  const made = await client.post<{ link: string }>(`${house}/people/${id}/password-link`, {});
  return `/link/${made.link}`;
}

/** By whoever recorded it: the house does without the rule of two persons. */
async function releaseOne({ client, things }: Site): Promise<string> {
  const rule = { fourEyes: false, reason: 'I build alone.' };
  await client.put(`${things.house}/release-rule`, rule);
  const { id } = await client.post<CoveringView>(`${things.house}/coverings`, {
    ...{ id: randomUUID(), name: 'Loft ceiling', kind: 'ceiling', plannedDay: '2099-05-02' },
    hides: ['い三', 'い二'].map((mark) => ({ mark, least: 'raised' })),
  });
  await client.post(`/coverings/${id}/ready`, {});
  const waived = { い二: 'Seen on site: it stands dry.', い三: 'Seen on site, too.' };
  const release = await releaseAsSeen(client, id, waived, 'Pegs counted from the scaffold.');
  return `${things.house}/releases/${release.id}`;
}

/** One member of it is on record, by whoever looks alone, and one is not. */
async function addReady({ client, things: { house } }: Site): Promise<string> {
  const hides = ['い一', 'い三'].map((mark) => ({ mark, least: 'raised' }));
  const facts = { id: randomUUID(), name: 'Loft lining', kind: 'ceiling', plannedDay: '2026-05-06', hides };
  const { id } = await client.post<CoveringView>(`${house}/coverings`, facts);
  await client.post(`/coverings/${id}/ready`, { note: 'The north end is still open.' });
  return `${house}/coverings/${id}/review`;
}

/** Sheets that were to be lifted long ago, and boards that were lifted again; on the day of the cranes, too. */
async function layOver({ client, things }: Site): Promise<string> {
  const lay = (name: string, more: object) =>
    client.post<ProtectionView>(`${things.house}/protections`, {
      ...{ id: randomUUID(), name, what: 'sheet, boards', laidAt: '2001-07-02T00:00:00.000Z', ...more },
    });
  const { id } = await lay('North sill, from the gable to the entrance', {
    ...{ hides: ['い一', 'い二', 'い通り地貫'], liftingDay: '2026-03-01', note: 'Nailed at the corners.' },
  });
  const { id: lifted } = await lay('Loft boards', { hides: ['は又五通り東側小屋組二重梁上束'] });
  await client.post(`/protections/${lifted}/lift`, { liftedAt: '2001-07-03T00:00:00.000Z', note: '' });
  return id;
}

/** An invented house whose first coverings close today; of one member nobody knows where it lies. */
async function addFramed({ client }: Site): Promise<Pick<MoreThings, 'framed' | 'wall'>> {
  const invented = threeBayHouse(new Date().toISOString().slice(0, 10));
  const { id } = await client.post<HouseView>('/houses', {
    ...{ id: randomUUID(), name: invented.name, zone: 'Asia/Tokyo' },
  });
  const framed = `/houses/${id}`;
  await client.put(`${framed}/grid`, invented.grid);
  const rows = invented.members.map(
    ({ mark, kind, place, setOut: { from, to, level, base, top, width, depth } }) =>
      [mark, kind, place, from, to, level, base ?? '', top ?? '', `${width ?? ''}×${depth ?? ''}`].join(','),
  );
  await client.raw('POST', `${framed}/schedule?fileName=frame.csv`, {
    body: ['番付,種類,場所,始点,終点,階,下端,上端,断面', ...rows, '西の小舞,小舞,西の壁,,,,,,'].join('\n'),
    headers: { 'content-type': 'text/csv' },
  });
  const plan = (covering: object, hides: object[] = []) =>
    client.post<CoveringView>(`${framed}/coverings`, { id: randomUUID(), ...covering, hides });
  const [roof, , west] = invented.coverings;
  if (!roof || !west) throw new Error('The invented house has no coverings.');
  await plan(roof);
  const { id: wall } = await plan(west, [{ mark: '西の小舞', least: 'lath-on' }]);
  return { framed, wall: `${framed}/coverings/${wall}` };
}

/** Every screen as it opens. */
export function screensOf({ things }: Site, more: MoreThings): View[] {
  const { closed, review, link, empty, alike, doubtful, sheets, framed, wall, release } = more;
  const named = Object.entries({
    ...houseScreens(things),
    'covering-closed': `${things.house}/coverings/${closed}`,
    'protection-new': `${things.house}/protection/new`,
    'protection-change': `${things.house}/protection/${sheets}`,
    'bench-alike': `${things.house}/photos/${alike}`,
    'bench-doubtful': doubtful,
    'review-ready': review,
    shots: `${framed}/shots?days=all`,
    'covering-wall': wall,
    release,
    'not-found-in-house': `${things.house}/nowhere`,
    'not-found': '/nowhere',
    houses: '/',
    account: '/account',
    'empty-journal': empty,
    'empty-photos': `${empty}/photos`,
    'empty-members': `${empty}/members`,
    'empty-coverings': `${empty}/coverings`,
    'empty-covering-new': `${empty}/coverings/new`,
    'empty-report': `${empty}/report`,
    'empty-findings': `${empty}/findings`,
    'findings-accepted': `${things.house}/findings?state=accepted`,
  });
  return [
    { name: 'sign-in', address: '/sign-in', isSignedOut: true },
    { name: 'link', address: `/link/${link}`, isSignedOut: true },
    { name: 'link-dead', address: '/link/worn-out', isSignedOut: true },
    { name: 'new-password', address: more.newPassword, isSignedOut: true },
    { name: 'guest-covering', address: more.guests.covering, isSignedOut: true },
    { name: 'guest-member', address: more.guests.member, isSignedOut: true },
    { name: 'guest-dead', address: '/guest/worn-out', isSignedOut: true },
    ...named.map(([name, address]) => ({ name, address })),
  ];
}

/** Moments: dialogs, problems, previews. None of them leaves anything behind but a name for somebody. */
export function momentsOf({ things, photos }: Site, more: MoreThings): View[] {
  const { closed, review, link: oneTime, newPassword, wall } = more;
  const { house, covering, mark } = things;
  const bench = `${house}/photos/${photos.cranes}`;
  const member = `${house}/members/${encodeURIComponent(mark)}`;
  const press = (page: Page, name: string) => button(page, name).first().click();
  const dialog = (page: Page) => page.locator('[role=dialog], [role=alertdialog]').last().waitFor();
  /** At the end of a review, with a member of which something is missing, and no word of what. */
  const lacking = async (page: Page, t: Words) => {
    await page.evaluate(() =>
      Object.keys(localStorage)
        .filter((key) => key.startsWith('arakabe.review.'))
        .forEach((key) => localStorage.removeItem(key)),
    );
    await page.reload();
    await answerButton(page, t('hold.review.missing')).click();
    await page.keyboard.press('e');
    await field(page, t('hold.review.end.note')).fill('');
  };
  return [
    {
      name: 'sign-in-refused',
      address: '/sign-in',
      isSignedOut: true,
      enter: async (page, t) => {
        await field(page, t('account.signIn.email')).fill(KEEPER);
        await field(page, t('account.signIn.password')).fill(`${PASSWORD}!`);
        await press(page, t('account.signIn.submit'));
        await page.getByRole('alert').first().waitFor();
      },
    },
    {
      name: 'link-problems',
      address: `/link/${oneTime}`,
      isSignedOut: true,
      enter: (page, t) => press(page, t('account.link.submit')),
    },
    {
      name: 'new-password-problems',
      address: newPassword,
      isSignedOut: true,
      enter: (page, t) => press(page, t('password.link.submit')),
    },
    {
      name: 'account-password-problems',
      address: '/account',
      enter: (page, t) => press(page, t('password.submit')),
    },
    {
      name: 'people-password',
      address: `${house}/people`,
      enter: async (page, t) => {
        await press(page, t('people.password.openNamed', { name: 'Aki' }));
        await dialog(page);
      },
    },
    {
      name: 'people-guest-problems',
      address: `${house}/people`,
      enter: (page, t) => press(page, t('people.guests.submit')),
    },
    {
      name: 'house-new-problems',
      address: '/',
      enter: async (page, t) => {
        await press(page, t('houses.open'));
        await press(page, t('houses.submit'));
        await page.getByText(t('houses.missing.name')).waitFor();
      },
    },
    {
      name: 'photos-refused',
      address: `${house}/photos`,
      enter: async (page, t) => {
        await chooseFiles(page, button(page, t('photos.choose')), [await damagedPhoto()]);
        await page.getByText(t('photos.queue.tidy'), { exact: true }).waitFor();
      },
    },
    {
      name: 'bench-drawn',
      address: bench,
      enter: async (page, t) => {
        await pictureDrawn(page, t);
        await chooseTool(page, t, 'rectangle');
        await dragBox(page, t, [0.3, 0.3], [0.6, 0.7]);
        await markField(page, t).fill('柱');
        await page.getByRole('option').first().waitFor();
      },
    },
    {
      name: 'bench-too-small',
      address: `${house}/photos/${photos.house}`,
      enter: async (page, t) => {
        await pictureDrawn(page, t);
        await chooseTool(page, t, 'rectangle');
        await dragBox(page, t, [0.3, 0.3], [0.6, 0.306]);
        await page.locator('.bench-legibility.act-text').waitFor();
      },
    },
    {
      name: 'bench-withdraw',
      address: bench,
      enter: async (page, t) => {
        await stageOf(page, t).waitFor();
        await press(page, t('bench.list.withdrawNamed', { mark }));
        await dialog(page);
      },
    },
    {
      name: 'member-add-problems',
      address: `${house}/members`,
      enter: async (page, t) => {
        await press(page, t('members.add'));
        await dialog(page);
        await button(page.getByRole('dialog'), t('members.add')).click();
        await page.getByText(t('members.wrong.empty')).waitFor();
      },
    },
    {
      name: 'findings-accept-problems',
      address: `${house}/findings`,
      enter: async (page, t) => {
        await page.locator('.finding').first().getByText(t('findings.accept'), { exact: true }).click();
        await dialog(page);
        await button(page.getByRole('dialog'), t('findings.dialog.submit')).click();
        await page.getByText(t('findings.dialog.needReason')).waitFor();
      },
    },
    { name: 'member-change', address: member, enter: (page, t) => press(page, t('members.edit')) },
    {
      name: 'lexicon-near',
      address: `${things.house}/lexicon`,
      enter: async (page, t) => {
        await field(page, t('lexicon.search')).fill('kudahashra');
        await page.getByText(t('lexicon.near')).waitFor();
        // What has the focus already cannot be seen to get it.
        await field(page, t('lexicon.search')).blur();
      },
    },
    {
      name: 'term-new-problems',
      address: `${things.house}/lexicon/new`,
      enter: async (page, t) => {
        await field(page, t('lexicon.edit.section')).fill('thick');
        await press(page, t('common.save'));
      },
    },
    { name: 'member-retire', address: member, enter: (page, t) => press(page, t('members.retire')) },
    {
      name: 'schedule-preview',
      address: `${house}/schedule`,
      enter: async (page, t) => {
        await chooseFiles(page, button(page, t('schedule.choose')), [PROBLEM_TABLE]);
        await page.getByRole('heading', { name: t('schedule.outcome.title') }).waitFor();
      },
    },
    {
      name: 'covering-new-problems',
      address: `${house}/coverings/new`,
      enter: async (page, t) => {
        await press(page, t('coverings.form.save'));
        await page.getByText(t('coverings.form.needName')).waitFor();
      },
    },
    {
      name: 'covering-leave',
      address: `${house}/coverings/new`,
      enter: async (page, t) => {
        await field(page, t('coverings.form.name')).fill('North');
        await link(page, t('common.cancel')).click();
        await dialog(page);
      },
    },
    {
      name: 'covering-close',
      address: `${house}/coverings/${covering}`,
      enter: async (page, t) => {
        await press(page, t('coverings.one.close'));
        await page.getByText(t('coverings.close.earlier'), { exact: true }).click();
        await button(page.getByRole('dialog'), t('coverings.close.submit')).click();
        await page.getByText(t('coverings.close.needAgree')).waitFor();
      },
    },
    {
      name: 'covering-ready',
      address: `${house}/coverings/${covering}`,
      enter: (page, t) => press(page, t('hold.ready.open')),
    },
    {
      name: 'covering-ready-alone',
      address: wall,
      enter: async (page, t) => {
        await press(page, t('hold.ready.open'));
        await page.getByText(t('hold.ready.onlyYou')).waitFor();
      },
    },
    {
      name: 'review-record',
      address: review,
      enter: async (page, t) => {
        await answerButton(page, t('hold.review.missing')).click();
        await answerButton(page, t('hold.review.seen')).waitFor();
      },
    },
    {
      name: 'review-end',
      address: review,
      enter: async (page, t) => {
        await page.keyboard.press('e');
        await page.getByRole('heading', { name: t('hold.review.end.title') }).waitFor();
      },
    },
    {
      name: 'review-refuse-problems',
      address: review,
      enter: async (page, t) => {
        await lacking(page, t);
        await press(page, t('hold.review.end.refuse'));
        await page.getByText(t('hold.review.end.needWords')).waitFor();
      },
    },
    {
      name: 'review-refuse',
      address: review,
      enter: async (page, t) => {
        await lacking(page, t);
        await field(page, t('hold.review.end.note')).fill('One more photo of each.');
        await press(page, t('hold.review.end.refuse'));
        await dialog(page);
      },
    },
    {
      name: 'bench-doubt',
      address: bench,
      enter: async (page, t) => {
        await press(page, t('hold.doubt.openNamed', { mark: 'い三' }));
        await dialog(page);
      },
    },
    {
      name: 'settings-rule',
      address: `${house}/settings`,
      enter: (page, t) => press(page, t('hold.rule.toTwo')),
    },
    {
      name: 'covering-reopen',
      address: `${house}/coverings/${closed}`,
      enter: (page, t) => press(page, t('coverings.one.reopen')),
    },
    {
      name: 'protection-new-problems',
      address: `${house}/protection/new`,
      enter: async (page, t) => {
        await press(page, t('protection.form.save'));
        await page.getByText(t('protection.form.needMembers'), { exact: true }).waitFor();
      },
    },
    {
      name: 'protection-lift',
      address: `${house}/coverings`,
      enter: async (page, t) => {
        await page.getByText(t('protection.lift'), { exact: true }).first().click();
        await dialog(page);
        await page.getByText(t('coverings.close.earlier'), { exact: true }).click();
        await button(page.getByRole('dialog'), t('protection.lifting.submit')).click();
        await page.getByText(t('coverings.close.badTime')).waitFor();
      },
    },
    {
      name: 'bench-under-protection',
      address: bench,
      enter: async (page, t) => {
        await pictureDrawn(page, t);
        await chooseTool(page, t, 'rectangle');
        await dragBox(page, t, [0.3, 0.3], [0.6, 0.7]);
        await markField(page, t).fill('い二');
        await page.getByRole('status').and(page.locator('.bench-under')).waitFor();
      },
    },
    {
      name: 'report-only-gaps',
      address: `${house}/report`,
      enter: (page, t) => tick(page, t('report.onlyGaps')),
    },
    {
      name: 'people-added',
      address: `${house}/people`,
      enter: async (page, t) => {
        await field(page, t('people.email')).fill(`${randomUUID()}@example.org`);
        await press(page, t('people.submit'));
        await page.getByRole('textbox', { name: t('people.link') }).waitFor();
      },
    },
  ];
}

/** Two good rows, one without a mark, one mark twice. */
const PROBLEM_TABLE = {
  name: 'frame.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(
    [
      '番付,部材,名称,場所,樹種,始点,終点,下端,上端,断面',
      'い四,柱,隅柱,南の壁,檜,,,,,',
      'い一,柱,隅柱（取り替え）,北の壁,檜,,,,,',
      'い通り桁,桁,,,杉,い一,い四,2400,2700,120×180',
      'い通り貫,貫,,,杉,い一,い四,900,2100,',
      ',貫,,,,,,,,',
      'い四,柱,,,,,,,,',
    ].join('\r\n'),
  ),
};
