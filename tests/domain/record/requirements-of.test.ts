import { describe, expect, it } from 'vitest';
import { needOf, type StatedRequirement } from '#domain/record/requirements-of';

const nuki = { id: 'nuki', hiddenBy: ['plaster-between-posts', 'plaster-over-posts'] } as const;
const hashira = { id: 'hashira', hiddenBy: ['plaster-over-posts'] } as const;
const WALL = { kind: 'plaster', form: 'plaster-between-posts' } as const;
const row = (more: Partial<StatedRequirement> = {}): StatedRequirement => ({
  ...{ form: 'plaster-between-posts', kind: 'nuki', hides: true, least: null, views: 1 },
  ...more,
});

// What plaster hides and which stage shows a rail last: common practice.
describe('what a covering needs of a kind', () => {
  it('is common where the house says nothing', () => {
    expect(needOf(nuki, 'wall', WALL, [])).toEqual({ least: 'pegged', views: 1 });
    expect(needOf(hashira, 'wall', WALL, [])).toBeNull();
    expect(needOf(hashira, 'wall', { ...WALL, form: 'plaster-over-posts' }, [])).not.toBeNull();
  });
  it('is what the house states, of this kind under this form only', () => {
    expect(needOf(nuki, 'wall', WALL, [row({ least: 'lath-on', views: 2 })])).toEqual({
      ...{ least: 'lath-on', views: 2 },
    });
    expect(needOf(nuki, 'wall', WALL, [row({ hides: false })])).toBeNull();
    expect(needOf(hashira, 'wall', WALL, [row({ kind: 'hashira' })])).not.toBeNull();
    expect(needOf(nuki, 'wall', WALL, [row({ hides: false, form: 'plaster-over-posts' })])).not.toBeNull();
  });
  it('is asked of a kind that nobody knows, and under a covering of no common form', () => {
    expect(needOf(null, 'wall', WALL, [])).not.toBeNull();
    expect(needOf(hashira, 'wall', { kind: 'other', form: null }, [])).not.toBeNull();
  });
  it('is never a stage that the member does not pass, or that the covering hides: no photo could show it', () => {
    expect(needOf(nuki, 'timber', WALL, [row({ least: 'lath-on' })])?.least).toBe('pegged');
    expect(needOf(nuki, 'wall', WALL, [row({ least: 'plastered' })])?.least).toBe('pegged');
    expect(needOf(nuki, 'lath', WALL, [row({ least: 'pegged' })])?.least).toBe('lath-on');
  });
});
