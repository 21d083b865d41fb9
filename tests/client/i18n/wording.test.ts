import { describe, expect, test } from 'vitest';
import { ROLES } from '#domain/contract/shapes';
import { parseTrack } from '#domain/frame/schedule-cells';
import { TRACKS, type Track } from '#domain/frame/stage';
import { SHEET_WORDS_EN } from '#domain/record/sheet/sheet-words-en';
import { SHEET_WORDS_JA } from '#domain/record/sheet/sheet-words-ja';
import { WRONG_SENTENCES } from '#domain/verify/wrong-sentences';
import { PAGE_WORDS } from '../../../server/services/archive/page-words.ts';
import { REPORT_WORDS } from '../../../server/services/report-words.ts';
import { en } from '../../../client/i18n/en.ts';
import { enLater } from '../../../client/i18n/en-later.ts';
import { ja } from '../../../client/i18n/ja.ts';
import { jaLater } from '../../../client/i18n/ja-later.ts';
import { lackingCounters, lackingPlurals } from '../../support/catalog-wording.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const tracks = Object.keys(TRACKS) as Track[];

test('no word comes both at once and later', () =>
  expect(Object.keys(en).filter((area) => area in enLater)).toEqual([]));

describe('counting', () => {
  test('English has one and many of all that it counts', () =>
    expect(lackingPlurals({ ...en, ...enLater })).toEqual([]));
  test('Japanese has a counter after each number', () =>
    expect(lackingCounters({ ...ja, ...jaLater })).toEqual([]));

  test('a form that is missing is named', () => {
    const catalog = {
      rows: '{{count, number}} rows',
      a: { photo_one: '{{count}} photo', gap_one: '{{count}} gap', gap_other: '{{count}} gaps' },
      seconds: '± {{count}} s',
      ended: 'Show the others ({{count}})',
    };
    expect(lackingPlurals(catalog)).toEqual(['rows counts without a plural', 'a.photo_other is missing']);
  });
  test('a number without its counter is named', () => {
    const catalog = {
      report: { gaps_other: '未記録 {{count, number}}', lost_other: '記録なしで隠蔽 {{count}}件' },
      place: '{{total}}のうち{{at}}枚目',
      name: '{{mark}} の履歴',
    };
    expect(lackingCounters(catalog)).toEqual(['report.gaps count', 'place total']);
  });
});

describe.each(LANGUAGES)('an archive speaks as the screens do, in %s', async (lang) => {
  const t = await wordsOf(lang);
  const page = PAGE_WORDS[lang];
  const sheet = { en: SHEET_WORDS_EN, ja: SHEET_WORDS_JA }[lang];
  test('of a release and what comes before it', () => {
    expect(page.hold).toBe(t('hold.title'));
    expect(page.planOnly).toBe(t('hold.state.planned'));
    expect(page.standing['covering.ready']).toBe(t('hold.state.ready'));
    expect(page.standing['covering.refused']).toBe(t('hold.state.refused'));
    expect(page.standing['covering.released']).toContain(t('hold.state.released'));
    expect(page.without('')).toContain(t('hold.state.without-release'));
  });
  test('of gaps that were accepted, on the page, the check and the sheet', () => {
    const accepted = t('hold.review.answer.waived');
    for (const said of [page.waived, t('check.told.accepted'), sheet.waived.heading, sheet.state.waived])
      expect(said.toLowerCase()).toContain(accepted);
    expect(page.accepted('Kei', 'then', 'dry')).toContain(accepted);
    expect(REPORT_WORDS[lang].state.waived).toBe(accepted);
  });
  test('of roles', () => {
    for (const role of ROLES) expect(sheet.role[role]).toBe(t(`common.role.${role}`));
  });
});

test('no screen says hold point or waiver: a release and a gap that was accepted are words enough', () => {
  const said = JSON.stringify([Object.values({ ...en, ...enLater }), WRONG_SENTENCES]);
  const words = said.replace(/"[^"]*":|\{\{[^}]*\}\}/gu, '');
  expect(words).not.toMatch(/hold point|waive/iu);
});

describe.each(LANGUAGES)('the stages that a member passes, in %s', async (lang) => {
  const t = await wordsOf(lang);
  test.each(tracks)('%s has a name on screen that a table may use', (track) => {
    const [name] = t(`common.track.${track}`).split(/[ （]/u);
    expect(parseTrack(name ?? '')).toBe(track);
  });
  test('the refusal names words that are read, in English and in Japanese', () => {
    const words = t('schedule.reason.unknown-track').split(/[\s、。（）(),.]+/u);
    const read = words.map(parseTrack).filter((track) => track !== undefined && track !== null);
    for (const track of tracks) expect(read.filter((found) => found === track)).toHaveLength(2);
  });
});
