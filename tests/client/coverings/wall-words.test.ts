import { describe, expect, it } from 'vitest';
import type { WallResultView } from '#domain/contract/wall-views';
import { WALL_RULE_SETS } from '#domain/frame/wall-rules';
import { publishedWords, scheduleWords, sourceWords } from '../../../client/screens/coverings/wall-words.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const plain: WallResultView = {
  rule: 'rail-width',
  figure: { at: 'least', limit: 100, unit: 'mm', read: 'summary' },
  measured: 90,
  verdict: 'differs',
  because: null,
  looked: [],
  differing: [],
};
const most: WallResultView = {
  ...plain,
  measured: null,
  figure: { ...plain.figure, at: 'most', limit: 910 },
};
const rules = WALL_RULE_SETS.map(({ unconfirmed, notLookedAt, ...set }) => ({
  ...{ ...set, unconfirmed: [...unconfirmed], notLookedAt: [...notLookedAt] },
}));

describe.each(LANGUAGES)('figures of a wall, in %s', async (lang) => {
  const t = await wordsOf(lang);
  it('stand with their unit and on which side the limit is', () => {
    expect(publishedWords(t, lang, plain)).toBe(lang === 'en' ? 'at least 100 mm' : '100 mm 以上');
    expect(publishedWords(t, lang, most)).toBe(lang === 'en' ? 'at most 910 mm' : '910 mm 以下');
    expect(scheduleWords(t, lang, plain)).toBe(lang === 'en' ? 'least 90 mm' : '最小 90 mm');
    expect(scheduleWords(t, lang, most)).toBe(t('walls.nothing'));
  });
  it('name their text and edition, what is unconfirmed and what was not looked at', () => {
    for (const set of rules) {
      const said = sourceWords(t, set);
      expect(said).toHaveLength(3);
      // Notification 1100 of 1981 (昭和56年) as amended by 1543 of 2003 (平成15年).
      expect(said[0]).toMatch(/1100.*1543/u);
      if (lang === 'en') expect(said[0]).toBe(`${set.source}, ${set.edition}`);
    }
  });
  it('of a set that no catalog has stand as the server says them', () => {
    const [set] = rules;
    if (set)
      expect(sourceWords(t, { ...set, id: 'another', source: 'Another text' })[0]).toMatch(/^Another text/);
  });
  it('are never called an approval', () => {
    expect(t('walls.lead')).toMatch(lang === 'en' ? /never an approval/ : /適合の判定ではありません/);
    expect(t('walls.caution')).toMatch(lang === 'en' ? /licensed/ : /資格のある人/);
  });
});
