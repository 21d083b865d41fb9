import { describe, expect, test } from 'vitest';
import type { CoveringView } from '#domain/contract/views';
import type { Zone } from '#domain/frame/zone';
import { factsOfDraft } from '../../../client/screens/coverings/covering-draft.ts';
import {
  layerAfter,
  nameAfter,
  placesAfter,
  zoneAfter,
} from '../../../client/screens/coverings/next-layer.ts';
import { readZone, zoneDraft } from '../../../client/screens/coverings/zone-draft.ts';

const wall = (face: 'both' | 'lower' | 'higher'): Zone => ({
  ...{ shape: 'wall', family: 'first', line: 'い', from: '一', to: '三', bottom: 450, top: 3250 },
  ...{ face, over: 'between-posts' },
});
const floor: Zone = { shape: 'flat', corners: ['い一', 'は三'], bottom: 250, top: 470 };
const roof: Zone = {
  ...{ shape: 'slope', family: 'second', eaves: '一', ridge: '二', from: 'い', to: 'は' },
  ...{ eavesHeight: 3250, ridgeHeight: 4000, below: 150 },
};
const covering = (zone: Zone | null, more: Partial<CoveringView> = {}): CoveringView => ({
  ...{
    id: 'c',
    name: '北の壁・荒壁',
    kind: 'plaster',
    plannedDay: '2026-05-01',
    zone,
    except: [],
    note: 'dry',
  },
  hold: { state: 'planned', said: null, lacking: [], release: null },
  ...{ hides: [], closed: null, changedAt: '2026-04-01T00:00:00.000Z', ...more },
});
const mark = (text: string) => text as CoveringView['except'][number];

describe('the next layer', () => {
  test('of a wall is its other face, with what is left out and listed; its day is its own', () => {
    const hides = [
      { mark: mark('い三'), least: 'raised' as const, views: 1, stretch: null, byZone: false },
      { mark: mark('い貫'), least: 'pegged' as const, views: 1, stretch: null, byZone: true },
    ];
    const before = covering(wall('lower'), { except: [mark('い二')], hides });
    const draft = layerAfter(before, nameAfter(before, 'ja'), 'mm');
    expect(factsOfDraft(draft, 'mm')).toEqual({
      ...{ name: '北の壁・荒壁・裏返し', kind: 'plaster', plannedDay: null, note: '' },
      ...{ zone: wall('higher'), except: ['い二'], hides: [{ mark: 'い三', least: 'raised' }] },
    });
    expect(nameAfter(covering(wall('both')), 'en')).toBe('北の壁・荒壁, next layer');
  });

  test('of a floor lies on it, of a ceiling under it; how thick it is must be typed', () => {
    expect(placesAfter(covering(floor, { kind: 'floor' }))).toEqual(['on-top', 'same']);
    const onTop = zoneAfter(zoneDraft(floor, 'mm'), 'on-top');
    expect(onTop).toMatchObject({ bottom: '470', top: '', corners: 'い一 は三' });
    expect(readZone(onTop, 'mm')).toEqual({ ok: false, field: 'top', reason: 'empty' });
    expect(readZone({ ...onTop, top: '485' }, 'mm')).toEqual({
      ok: true,
      zone: { ...floor, bottom: 470, top: 485 },
    });
    expect(placesAfter(covering(floor, { kind: 'ceiling' }))).toEqual(['below', 'same']);
    expect(zoneAfter(zoneDraft(floor, 'mm'), 'below')).toMatchObject({ bottom: '', top: '250' });
    const listed = [{ mark: mark('根太'), least: 'raised' as const, views: 1, stretch: null, byZone: false }];
    expect(layerAfter(covering(floor, { kind: 'floor', hides: listed }), '', 'mm').hides.size).toBe(0);
  });

  test('of a roof lies on it, between the same lines', () => {
    const onTop = zoneAfter(zoneDraft(roof, 'mm'), 'on-top');
    expect(onTop).toMatchObject({ eaves: '一', ridge: '二', eavesHeight: '', ridgeHeight: '', below: '' });
    expect(zoneAfter(zoneDraft(roof, 'mm'), 'same')).toEqual(zoneDraft(roof, 'mm'));
  });

  test('has no place after what only lists its members', () =>
    expect(placesAfter(covering(null))).toEqual([]));
});
