import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { needOf, type StatedRequirement } from '#domain/record/requirements-of';
import {
  COVERING_FORMS,
  common,
  isSameTable,
  needsUnder,
  usualLeast,
  withNeed,
  withoutNeed,
  type Need,
} from '../../../client/screens/needs/needs-draft.ts';

const { kinds } = BUILT_IN;
const BETWEEN = 'plaster-between-posts';
const under = (stated: readonly StatedRequirement[]) => needsUnder(BETWEEN, kinds, stated);
const need = (id: string, stated: readonly StatedRequirement[] = []) =>
  under(stated).find(({ kind }) => kind === id);

/** A kind as the screen adds it. */
const added = (id: string): Need => {
  const known = kinds.find((kind) => kind.id === id);
  if (!known) throw new Error(id);
  return { ...common(BETWEEN, known), hides: true, known, isOwn: true };
};

describe('the table of what coverings need', () => {
  // Rails lie in the wall, posts stay in sight where plaster lies between them: common practice.
  test('begins with what is common', () => {
    expect(need('nuki')).toMatchObject({ hides: true, least: null, views: 1, isOwn: false });
    expect(need('hashira')).toBeUndefined();
    expect(under([]).every(({ isOwn }) => !isOwn)).toBe(true);
  });

  test('takes a kind in, marks it, and goes back', () => {
    const stated = withNeed([], added('hashira'));
    expect(stated).toEqual([{ form: BETWEEN, kind: 'hashira', hides: true, least: null, views: 1 }]);
    expect(need('hashira', stated)).toMatchObject({ hides: true, isOwn: true });
    expect(withoutNeed(stated, added('hashira'))).toEqual([]);
  });

  test('changes a row, and does not state what is common', () => {
    const rail = need('nuki') as Need;
    const twice = withNeed(withNeed([], { ...rail, views: 2 }), { ...rail, views: 2, least: 'lath-on' });
    expect(twice).toEqual([{ form: BETWEEN, kind: 'nuki', hides: true, least: 'lath-on', views: 2 }]);
    expect(withNeed(twice, rail)).toEqual([]);
    const visible = withNeed(twice, { ...rail, views: 2, hides: false });
    expect(visible).toEqual([{ form: BETWEEN, kind: 'nuki', hides: false, least: null, views: 1 }]);
    expect(need('nuki', visible)).toMatchObject({ hides: false, isOwn: true });
    expect(withNeed(withNeed([], added('hashira')), { ...added('hashira'), hides: false })).toEqual([]);
  });

  test('leaves other forms alone, and keeps rows of kinds that are gone', () => {
    const others: StatedRequirement[] = [
      { form: 'ceiling', kind: 'nuki', hides: true, least: null, views: 3 },
      { form: BETWEEN, kind: 'own-gone', hides: true, least: 'raised', views: 1 },
    ];
    expect(withNeed(others, added('hashira')).slice(0, 2)).toEqual(others);
    expect(under(others).at(-1)).toMatchObject({ kind: 'own-gone', known: null, isOwn: true });
  });

  test('says the same as the server asks for, of every kind under every form', () => {
    for (const form of COVERING_FORMS) {
      const kind = form.startsWith('plaster') ? 'plaster' : (form as 'floor');
      const shown = new Map(needsUnder(form, kinds, []).map((row) => [row.kind, row]));
      for (const known of kinds) {
        const asked = needOf(known, known.track, { kind, form }, []);
        const row = shown.get(known.id);
        expect(row ? usualLeast(form, known.track) : undefined).toBe(asked?.least);
      }
    }
  });

  test('is the same in any order', () => {
    const [a, b] = [added('hashira'), added('dodai')];
    const there = withNeed(withNeed([], a), b);
    expect(isSameTable(there, withNeed(withNeed([], b), a))).toBe(true);
    expect(isSameTable(there, withNeed([], a))).toBe(false);
    expect(isSameTable(there, withNeed(withNeed([], b), { ...a, views: 2 }))).toBe(false);
  });
});
