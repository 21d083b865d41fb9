import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { JournalView } from '#domain/contract/journal-views';
import { endTour, noteStep, readTour } from '../../../client/screens/days/tour-seen.ts';
import { tourSteps } from '../../../client/screens/days/tour-steps.ts';
import { memoryStorage } from '../memory-storage.ts';

const day = (...pictures: { id: string; tags: number }[]) => ({ pictures });

const journal = (more: object = {}) =>
  ({
    ...{ openCoverings: 1, today: day(), lastDay: null, holds: [] },
    earlier: { days: [day({ id: 'bare', tags: 0 }), day({ id: 'tagged', tags: 2 })], next: null },
    ...more,
  }) as unknown as JournalView;

const pathsOf = (view: JournalView, isInspector = false) =>
  tourSteps(view, isInspector).map(({ path }) => path);

test('there are three steps: the report, a photo that is tagged, and the frame', () => {
  expect(pathsOf(journal())).toEqual(['report', 'photos/tagged', 'frame']);
});

test('a photo without tags does where no other is on the page, and nothing without photo or covering', () => {
  const bare = journal({ earlier: { days: [day({ id: 'bare', tags: 0 })] } });
  expect(pathsOf(bare)[1]).toBe('photos/bare');
  expect(pathsOf(journal({ earlier: { days: [] } }))).toEqual([]);
  expect(pathsOf(journal({ openCoverings: 0 }))).toEqual([]);
});

test('an inspector is led to what waits for it', () => {
  const holds = [
    { id: 'refused', state: 'refused' },
    { id: 'ready', state: 'ready' },
  ];
  expect(pathsOf(journal({ holds }), true)[2]).toBe('coverings/ready/review');
  expect(pathsOf(journal({ holds }))[2]).toBe('frame');
  expect(pathsOf(journal(), true)[2]).toBe('frame');
});

beforeEach(() => vi.stubGlobal('localStorage', memoryStorage()));
afterEach(() => vi.unstubAllGlobals());

test('each person sees it on one day, until every step was taken', () => {
  expect(readTour('haru', '2026-04-01', 3)).toEqual([]);
  noteStep('haru', '2026-04-01', ['report', 'photo']);
  expect(readTour('haru', '2026-04-01', 3)).toEqual(['report', 'photo']);
  expect(readTour('aki', '2026-04-01', 3)).toEqual([]);
  noteStep('haru', '2026-04-01', ['report', 'photo', 'frame']);
  expect(readTour('haru', '2026-04-01', 3)).toBeNull();
  expect(readTour('aki', '2026-04-02', 3)).toBeNull();
});

test('it ends when somebody says so, and is not shown where nothing can be kept', () => {
  readTour('haru', '2026-04-01', 3);
  endTour('haru');
  expect(readTour('haru', '2026-04-01', 3)).toBeNull();
  vi.stubGlobal('localStorage', undefined);
  expect(readTour('aki', '2026-04-01', 3)).toBeNull();
  expect(() => endTour('aki')).not.toThrow();
});
