import { describe, expect, test } from 'vitest';
import { COVERING_KINDS } from '#domain/contract/shapes';
import type { Track } from '#domain/frame/stage';
import type { Mark } from '#domain/frame/mark';
import {
  EMPTY_DRAFT,
  KINDS,
  draftOf,
  factsOfDraft,
  isChanged,
  offeredStages,
  pastedMarks,
  reduceCovering,
  type CoveringEvent,
} from '../../../client/screens/coverings/covering-draft.ts';

const member = (mark: string, track: Track) => ({ mark: mark as Mark, track });
const rail = member('い三', 'wall');
const lath = member('小舞北', 'lath');
const joist = member('根太一', 'floor');
const tracks = new Map<string, Track>([rail, lath, joist].map(({ mark, track }) => [mark, track]));
const play = (...events: CoveringEvent[]) => events.reduce(reduceCovering, EMPTY_DRAFT);
const least = (draft: typeof EMPTY_DRAFT) =>
  Object.fromEntries([...draft.hides].map(([mark, { stage }]) => [mark, stage]));

describe('a covering that is being planned', () => {
  test('proposes the least stage of each member', () => {
    expect(least(play({ type: 'tick', members: [rail, lath] }))).toEqual({
      い三: 'pegged',
      小舞北: 'lath-on',
    });
  });
  test('ticking again keeps what a person chose', () => {
    const draft = play(
      { type: 'tick', members: [rail] },
      { type: 'choose-least', mark: 'い三', stage: 'raised' },
      { type: 'tick', members: [rail, lath] },
    );
    expect(least(draft)).toEqual({ い三: 'raised', 小舞北: 'lath-on' });
  });
  test('another kind of covering keeps chosen stages where it can, and proposes the others', () => {
    const draft = play(
      { type: 'choose-kind', kind: 'floor', tracks },
      { type: 'tick', members: [rail, joist] },
      { type: 'choose-least', mark: 'い三', stage: 'plastered' },
      { type: 'choose-least', mark: '根太一', stage: 'raised' },
      { type: 'choose-kind', kind: 'plaster', tracks },
    );
    expect(least(draft)).toEqual({ い三: 'pegged', 根太一: 'raised' });
  });
  test('one stage for all leaves members alone that never pass it', () => {
    const draft = play(
      { type: 'tick', members: [rail, lath, joist] },
      { type: 'choose-least-of-all', stage: 'raised', tracks },
    );
    expect(least(draft)).toEqual({ い三: 'raised', 小舞北: 'lath-on', 根太一: 'raised' });
  });
  test('unticking takes out', () => {
    expect(least(play({ type: 'tick', members: [rail, lath] }, { type: 'untick', marks: ['い三'] }))).toEqual(
      {
        小舞北: 'lath-on',
      },
    );
  });
  test('under plaster nothing can be asked to show the plaster', () => {
    expect(offeredStages('plaster', 'lath')).toEqual(['lath-on']);
    expect(offeredStages('floor', 'lath')).toEqual(['lath-on', 'plastered']);
  });
  test('comes out as the server takes it, and goes in again', () => {
    const draft = play(
      { type: 'write', field: 'name', text: ' North wall ' },
      { type: 'tick', members: [rail] },
    );
    expect(factsOfDraft(draft, 'mm')).toEqual({
      name: 'North wall',
      kind: 'plaster',
      plannedDay: null,
      note: '',
      zone: null,
      except: [],
      hides: [{ mark: 'い三', least: 'pegged' }],
    });
    const facts = {
      name: 'N',
      kind: 'floor',
      plannedDay: '2026-04-20',
      note: 'x',
      hides: [{ mark: 'い三' as Mark, least: 'raised' }],
    } as const;
    const zone = { shape: 'flat' as const, corners: ['い一', 'は三'], bottom: 0, top: 450 };
    const seen = { views: 1, stretch: null };
    const hides = [
      { ...facts.hides[0], ...seen, byZone: false },
      { mark: 'ろ二' as Mark, least: 'pegged' as const, ...seen, byZone: true },
    ];
    const space = { zone, except: ['い四' as Mark] };
    const hold = { state: 'planned' as const, said: null, lacking: [], release: null };
    const view = { ...facts, ...space, hides, id: 'c', hold, closed: null, changedAt: '' };
    expect(factsOfDraft(draftOf(view, 'mm'), 'mm')).toEqual({ ...facts, zone, except: ['い四'] });
  });
});

test('all kinds of the contract are offered', () => expect(KINDS).toEqual(COVERING_KINDS));

const isKnown = (mark: string) => ['い一', 'い二', 'い三', 'P12', '柱 北'].includes(mark);

describe('pasted marks', () => {
  test('by line, comma, tab, 読点; in normal form; each once', () => {
    expect(pastedMarks('い一\r\nい二、い三,Ｐ１２\tい一;\n\n 柱  北 ', isKnown)).toEqual([
      'い一',
      'い二',
      'い三',
      'P12',
      '柱 北',
    ]);
  });
  test('a space stands between two marks where no member has it in its own', () =>
    expect(pastedMarks('い一 い二　い九\n柱 北', isKnown)).toEqual(['い一', 'い二', 'い九', '柱 北']));
  test('nothing pasted is nothing', () => expect(pastedMarks(' \n,', isKnown)).toEqual([]));
});

test('a covering is changed by what it says, not by ticking a member off and on again', () => {
  const start = play({ type: 'tick', members: [rail, lath] });
  const again = [
    { type: 'untick', marks: [rail.mark] },
    { type: 'tick', members: [rail] },
  ] as const satisfies CoveringEvent[];
  expect(isChanged(again.reduce(reduceCovering, start), start)).toBe(false);
  const changes: CoveringEvent[] = [
    { type: 'write', field: 'note', text: 'x' },
    { type: 'write', field: 'plannedDay', text: '2026-04-01' },
    { type: 'untick', marks: [lath.mark] },
    { type: 'choose-least', mark: rail.mark, stage: 'raised' },
  ];
  for (const change of changes)
    expect(isChanged(reduceCovering(start, change), start), change.type).toBe(true);
});
