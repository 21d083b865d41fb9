import { expect, test } from 'vitest';
import { STAGES, TRACK_NAMES, TRACKS } from '#domain/frame/stage';
import { STROKES, strokeStates } from '../../../client/parts/stage-glyph.ts';

// Unihan, kTotalStrokes of U+6B63: 5 (from memory); the strokes are drawn in their order of writing.
test('正 has five strokes, one a stage', () => {
  expect(STROKES).toHaveLength(5);
  expect(STAGES).toHaveLength(5);
});

test.each([
  [null, 'wall', '-----'],
  ['cut', 'wall', '#----'],
  ['pegged', 'wall', '###--'],
  ['plastered', 'wall', '#####'],
  ['pegged', 'timber', '###  '],
  [null, 'timber', '---  '],
  ['raised', null, '##---'],
  ['lath-on', 'lath', '####-'],
  ['plastered', 'timber', '#####'],
] as const)('%s on the track %s: %s', (stage, track, drawn) => {
  const signs = { passed: '#', ahead: '-', outside: ' ' };
  expect(
    strokeStates(stage, track)
      .map((state) => signs[state])
      .join(''),
  ).toBe(drawn);
});

test('no two stages of a track look alike', () => {
  for (const track of TRACK_NAMES) {
    const drawn = [null, ...TRACKS[track]].map((stage) => strokeStates(stage, track).join());
    expect(new Set(drawn).size).toBe(drawn.length);
  }
});
