import { describe, expect, test } from 'vitest';
import { LANGUAGES, wordsOf } from '../words.ts';
import { suggestedIn } from '../../../client/screens/bench/suggested.ts';

describe.each(LANGUAGES)('names of the bench in %s', (lang) => {
  // WCAG 2.2, 2.5.3: who speaks to the machine says what is to be read on the button.
  test.each([
    ['bench.unsent.drop', 'bench.unsent.dropNamed'],
    ['bench.unsent.putRight', 'bench.unsent.putRightNamed'],
    ['bench.list.change', 'bench.list.changeNamed'],
    ['bench.list.also', 'bench.list.alsoNamed'],
    ['bench.list.withdraw', 'bench.list.withdrawNamed'],
    ['bench.short.undo', 'bench.undo'],
    ['bench.short.redo', 'bench.redo'],
    ['bench.short.boxInMiddle', 'bench.boxInMiddle'],
    ['bench.short.in', 'bench.zoom.in'],
    ['bench.short.out', 'bench.zoom.out'],
    ['bench.short.all', 'bench.zoom.all'],
    ['bench.short.closeOutline', 'bench.closeOutline'],
    ['bench.short.drop', 'bench.drop'],
    ['bench.short.leave', 'bench.leave'],
  ] as const)('%s is part of %s', async (visible, name) => {
    const t = await wordsOf(lang);
    expect(t(name, { mark: 'い二' }).toLowerCase()).toContain(t(visible).toLowerCase());
  });
});

test('only what still stands as it was proposed is called suggested', () => {
  const fresh = { mark: 'い三', stage: 'pegged', note: '' } as const;
  expect(suggestedIn(fresh, fresh)).toBe('both');
  expect(suggestedIn({ ...fresh, mark: 'ろ一' }, fresh)).toBe('stage');
  expect(suggestedIn({ ...fresh, stage: 'cut' }, fresh)).toBe('mark');
  expect(suggestedIn({ ...fresh, mark: 'ろ一', stage: 'cut' }, fresh)).toBeNull();
  expect(suggestedIn({ mark: '', stage: null, note: '' }, { mark: '', stage: null, note: '' })).toBeNull();
});
