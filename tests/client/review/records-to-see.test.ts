import { expect, test } from 'vitest';
import type { Shown } from '../../../client/screens/review/evidence-of.ts';
import { recordsToSee } from '../../../client/screens/review/records-to-see.ts';

const PART = { fromMark: '一', toMark: '三' };
const record = (id: string, stretch: object | null, disputed: object | null = null) =>
  ({ tag: { id, stretch, disputed } }) as unknown as Pick<Shown, 'tag'>;
const toSee = (views: number, ...evidence: Pick<Shown, 'tag'>[]) =>
  recordsToSee(evidence, views).map(({ tag }) => tag.id);

test('the best is enough where it shows all of the member', () => {
  expect(toSee(1, record('a', null), record('b', null), record('c', PART))).toEqual(['a']);
});

test('of a member that stands together of parts, each part is looked at', () => {
  expect(toSee(1, record('a', PART), record('b', PART))).toEqual(['a', 'b']);
  expect(toSee(1, record('a', PART), record('b', null), record('c', PART))).toEqual(['a', 'b']);
});

test('where two views are asked for, two are looked at', () => {
  expect(toSee(2, record('a', null), record('b', null), record('c', null))).toEqual(['a', 'b']);
  expect(toSee(2, record('a', null))).toEqual(['a']);
});

test('what was doubted is looked at wherever it stands, also when somebody has answered', () => {
  expect(toSee(1, record('a', null), record('b', null, { reason: 'dark' }))).toEqual(['a', 'b']);
});
