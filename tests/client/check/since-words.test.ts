import { describe, expect, test } from 'vitest';
import type { TagWord } from '#domain/verify/replay/state';
import type { ToldRecord } from '#domain/verify/told-since';
import { standingWords, tagWords } from '../../../client/check/since-words.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const said = { seq: 20, at: '2026-04-03T01:29:00.000Z', by: '佐藤 光', role: 'inspector' };
const doubted: TagWord = { ...said, what: 'doubted', reason: '楔が見えない' };
const record = (state: ToldRecord['state']): ToldRecord => ({
  tag: state,
  mark: 'い二',
  state,
  said: [doubted],
});

describe('a release is not plainly said to stand', () => {
  test.each(LANGUAGES)('in %s, with a record that is doubted, withdrawn or replaced', async (lang) => {
    const t = await wordsOf(lang);
    const plain = standingWords(t, []);
    for (const state of ['doubted', 'withdrawn', 'superseded', 'answered'] as const)
      expect(standingWords(t, [record(state)])).not.toBe(plain);
  });

  test('and says of how many', async () => {
    const since = (['doubted', 'withdrawn', 'answered'] as const).map(record);
    expect(standingWords(await wordsOf('en'), since)).toBe(
      'it stands, but 2 records that it rests on are doubted or gone since',
    );
    expect(standingWords(await wordsOf('ja'), since)).toBe(
      '有効だが、もとになった記録2件に、承認の後で疑義・取り消し・変更あり',
    );
  });
});

test('a doubt is told with who, when, where in the ledger and why', async () => {
  const speech = async (lang: 'en' | 'ja') => ({ t: await wordsOf(lang), lang, zone: 'Asia/Tokyo' });
  expect(tagWords(await speech('en'), doubted)).toBe(
    'Doubted by 佐藤 光 (inspector), 3 Apr 2026, 10:29, ledger entry No. 21: 楔が見えない',
  );
  expect(tagWords(await speech('ja'), doubted)).toBe(
    '疑義：佐藤 光（検査員）、2026年4月3日 10:29、台帳の第21項目。理由：楔が見えない',
  );
  expect(tagWords(await speech('en'), { ...doubted, what: 'withdrawn', reason: '' })).toBe(
    'Withdrawn by 佐藤 光 (inspector), 3 Apr 2026, 10:29, ledger entry No. 21',
  );
  expect(
    tagWords(await speech('ja'), { ...said, what: 'superseded', mark: 'い三', stage: 'pegged' }),
  ).toMatch(/改めた後は「い三」の「緊結」$/u);
});
