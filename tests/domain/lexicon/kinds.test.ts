import { toKatakana, toRomaji } from 'wanakana';
import { describe, expect, it, test } from 'vitest';
import { ABOUT } from '#domain/lexicon/about/about';
import { FAMILIES } from '#domain/lexicon/family';
import { KINDS, type Kind } from '#domain/lexicon/kinds';
import { BUILT_IN, lexiconOf, takenSpelling } from '#domain/lexicon/lexicon';
import { soundOf } from '#domain/lexicon/sound';
import { findKind, foldTerm, trackOf } from '#domain/lexicon/track-of-kind';

const kind = (id: string): Kind => {
  const found = BUILT_IN.byId.get(id);
  if (!found) throw new Error(`No kind ${id}.`);
  return found;
};

describe('the lexicon', () => {
  it('has at least 90 kinds of the frame, and what is hidden with it', () => {
    const hiddenWithIt = ['fastener', 'service', 'insulation', 'membrane'];
    expect(KINDS.filter(({ family }) => !hiddenWithIt.includes(family)).length).toBeGreaterThanOrEqual(90);
    for (const family of FAMILIES) expect(KINDS.some((one) => one.family === family)).toBe(true);
    expect(new Set(KINDS.map(({ id }) => id)).size).toBe(KINDS.length);
  });

  it('says of each kind what it does, how it is fastened and what to show, in both languages', () => {
    expect(Object.keys(ABOUT).sort()).toEqual(KINDS.map(({ id }) => id).sort());
    for (const [en, ja] of Object.values(ABOUT)) {
      for (const sentence of en) expect(sentence).toMatch(/^[A-Z][\x20-\x7e°×≥≤]+[.]$/);
      for (const sentence of ja) expect(sentence).toMatch(/^[^\x20-\x7e]+。$/u);
    }
  });

  // wanakana 5 is the reference: Hepburn without macrons, where ō is ou or oo as the kana say.
  test.each(KINDS.map(({ kana, romaji }) => [kana, romaji]))('%s is read %s', (kana, romaji) => {
    const macron = { ā: 'aa', ī: 'ii', ū: 'uu', ē: 'ee', ō: 'o[uo]' } as Record<string, string>;
    const long = romaji.replace(/[āīūēō]/gu, (vowel) => macron[vowel] ?? vowel);
    // It writes ファ and フィ as fua and fyi.
    expect(toRomaji(toKatakana(kana)).replace(/fu(?=a)|fy(?=i)/, 'f')).toMatch(new RegExp(`^${long}$`));
    expect(soundOf(foldTerm(kana))).toBe(soundOf(foldTerm(romaji)));
  });

  it('gives an axis and a section only to what has them', () => {
    for (const { id, lies, section } of KINDS) {
      if (lies === 'none') expect([id, section]).toEqual([id, null]);
      if (section) for (const mm of section) expect(mm).toBeGreaterThan(0);
    }
  });

  // MoC Notification 1100 (1981, as amended by MLIT 1543 of 2003): at least 15 mm thick and 100 mm wide.
  test.each(['nuki', 'jinuki', 'koshinuki', 'uchinorinuki', 'tenjonuki'])(
    '%s is no thinner than the notification asks',
    (id) => {
      const [thick = 0, high = 0] = kind(id).section ?? [];
      expect(thick).toBeGreaterThanOrEqual(15);
      expect(high).toBeGreaterThanOrEqual(100);
    },
  );

  // 真壁 leaves posts, beams, plates and sills in sight, 大壁 hides them (common practice).
  test.each([
    ...['nuki', 'mabashira', 'sujikai', 'komai', 'mawatashidake'].map((id) => [id, true] as const),
    ...['hashira', 'dodai', 'hari', 'keta', 'dosashi'].map((id) => [id, false] as const),
  ])('plaster between posts hides %s: %s', (id, isHidden) => {
    expect(kind(id).hiddenBy.includes('plaster-between-posts')).toBe(isHidden);
    expect(kind(id).hiddenBy).toContain('plaster-over-posts');
  });
});

describe('the lexicon of a house', () => {
  const nuki = kind('nuki');
  const own: Kind = {
    ...nuki,
    id: '00000000-0000-4000-8000-000000000001',
    ...{ kanji: '面格子', kana: 'めんごうし', romaji: 'mengōshi', en: 'lattice panel', also: ['grid'] },
    track: 'lath',
  };
  const renamed: Kind = {
    ...nuki,
    kanji: '横貫',
    kana: 'よこぬき',
    romaji: 'yokonuki',
    en: 'cross rail',
    also: [],
  };

  it('holds what the crew entered', () => {
    const lexicon = lexiconOf([own]);
    for (const name of ['面格子', 'メンゴウシ', 'mengoshi', 'Grid'])
      expect(findKind(name, lexicon)?.id).toBe(own.id);
    expect(trackOf(null, 'grid', lexicon)).toBe('lath');
    expect(trackOf(null, 'grid')).toBe('wall');
  });

  it('renames a kind and still finds it under its old names', () => {
    const lexicon = lexiconOf([{ ...renamed, track: 'timber' }]);
    for (const name of ['横貫', '貫', 'tie rail']) {
      expect(findKind(name, lexicon)).toMatchObject({ id: 'nuki', kanji: '横貫', track: 'timber' });
    }
    expect(lexicon.kinds).toHaveLength(KINDS.length);
  });

  it('names the kind that has a spelling already', () => {
    expect(takenSpelling(BUILT_IN, { ...own, also: ['Rafter'] })).toMatchObject({
      spelling: 'Rafter',
      by: { id: 'taruki' },
    });
    expect(takenSpelling(BUILT_IN, renamed)).toBeNull();
    expect(takenSpelling(BUILT_IN, nuki)).toBeNull();
    expect(takenSpelling(lexiconOf([own]), { ...renamed, also: ['ｇｒｉｄ'] })?.by.id).toBe(own.id);
  });

  it('lets the crew’s word hold where a later program has another kind of that name', () =>
    expect(findKind('rafter', lexiconOf([{ ...own, also: ['rafter'] }]))?.id).toBe(own.id));
});
