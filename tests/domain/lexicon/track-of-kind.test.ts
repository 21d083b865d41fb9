import { describe, expect, it } from 'vitest';
import { KINDS, spellings } from '#domain/lexicon/kinds';
import { findKind, foldTerm, inferTrack, trackOf } from '#domain/lexicon/track-of-kind';

describe('the lexicon', () => {
  it('gives every spelling to one kind only', () => {
    const owners = new Map<string, string>();
    for (const kind of KINDS)
      for (const term of spellings(kind)) {
        expect([term, owners.get(foldTerm(term)) ?? kind.id]).toEqual([term, kind.id]);
        owners.set(foldTerm(term), kind.id);
      }
  });

  it('writes each name in its own script', () => {
    for (const kind of KINDS) {
      expect(kind.id).toMatch(/^[a-z]+$/);
      // A word from abroad is written in katakana and read as it is written.
      expect(kind.kana).toMatch(kind.kana === kind.kanji ? /^[ぁ-ゖァ-ヶー]+$/u : /^[ぁ-ゖー]+$/u);
      expect(kind.romaji).toMatch(/^[a-zāīūēō']+$/u);
      expect(kind.en).toMatch(/^[a-z][a-z -]+$/);
      expect(kind.kanji).toMatch(/[\p{Script=Han}ぁ-ゖァ-ヶ]/u);
    }
  });
});

describe('trackOf', () => {
  // Tracks: common practice.
  it.each([
    ['貫', 'wall'],
    ['ぬき', 'wall'],
    ['NUKI', 'wall'],
    ['Tie  Rail', 'wall'],
    ['Rafter', 'timber'],
    ['垂木', 'timber'],
    ['ＲＡＦＴＥＲ', 'timber'],
    ['ﾀﾙｷ', 'timber'],
    ['ネダ', 'floor'],
    ['ōbiki', 'floor'],
    ['O\u0304BIKI', 'floor'],
    ['大引', 'floor'],
    ['小舞', 'lath'],
    ['Floor joist', 'floor'],
  ])('%s is on the %s track', (kind, track) => expect(trackOf(null, kind)).toBe(track));

  it('lets the schedule say otherwise', () =>
    expect(inferTrack('timber', '貫')).toEqual({ track: 'timber', source: 'stated' }));

  it('says when it only assumes, with the track that refuses no stage', () => {
    expect(inferTrack(null, 'gable thing')).toEqual({ track: 'wall', source: 'unknown-kind' });
    expect(inferTrack(null, '')).toEqual({ track: 'wall', source: 'unknown-kind' });
    expect(inferTrack(null, '貫').source).toBe('kind');
  });

  it('does not guess from a part of a word', () => expect(findKind('nuki-like')).toBeUndefined());
});
