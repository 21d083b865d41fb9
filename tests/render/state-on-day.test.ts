import { expect, test } from 'vitest';
import { linesOf } from '#domain/frame/invented/boathouse/lines';
import { USUAL_SIZE } from '#domain/frame/invented/boathouse/measures';
import { buildDaysOf, stageBy } from '#domain/frame/invented/boathouse/build-days';
import { SHOTS } from '../../server/demo/render/shots/shots.ts';
import { HOUSE, stateOnDay } from '../../server/demo/render/shots/state-on-day.ts';
import { sunOnDay } from '../../server/demo/render/shots/sun.ts';
import { SITE, bearingOf, positionOf } from '../../server/demo/render/shots/site-on-earth.ts';

const daysOf = buildDaysOf(linesOf(USUAL_SIZE));
const degrees = (radians: number) => (radians * 180) / Math.PI;

test('on the evening of a day every member stands at the stage that the calendar has', () => {
  for (const day of [-6, 0, 2, 6, 10, 17, 24, 28]) {
    const stages = new Map(stateOnDay({ day }).members.map(({ mark, stage }) => [mark, stage]));
    for (const member of HOUSE.members) {
      const stage = stageBy(daysOf(member), day);
      expect(stages.get(member.mark) ?? 'cut', `${member.mark} on day ${day}`).toBe(stage ?? 'cut');
    }
  }
});

test('before the raising there are stones and no member', () => {
  const state = stateOnDay({ day: -6 });
  expect(state.members).toEqual([]);
  expect(state.stones.length).toBeGreaterThanOrEqual(25);
  expect(stateOnDay({ day: 28 }).stones).toEqual(state.stones);
});

test('within a day frames follow each other from the west, and no other day is touched', () => {
  const marks = stateOnDay({ day: 0, done: 0.5 }).members.map(({ mark }) => mark);
  expect(marks).toContain('は三');
  expect(marks).not.toContain('に三');
  expect(marks).not.toContain('一通り足固め');
  expect(stateOnDay({ day: 4, done: 0.5 }).members).toEqual(stateOnDay({ day: 4 }).members);
});

test('roof and lath lie as far as the calendar has them', () => {
  const laid = (day: number, done?: number) =>
    stateOnDay({ day, ...(done && { done }) }).boards.map((b) => b.laid);
  expect([laid(7), laid(8, 0.4), laid(8), laid(9, 0.2), laid(10)]).toEqual([
    [],
    [0.4],
    [1],
    [1, 0.2],
    [1, 1],
  ]);
  const bays = (day: number) => stateOnDay({ day }).walls.length;
  expect([23, 24, 25, 26, 27, 28].map(bays)).toEqual([0, 4, 8, 12, 15, 19]);
  expect(new Set(stateOnDay({ day: 29 }).walls.map(({ infill }) => infill))).toEqual(new Set(['lath']));
  expect(stateOnDay({ day: 30 }).walls.filter(({ infill }) => infill === 'rough')).toHaveLength(4);
});

test('there are shots of five weeks, and the sun is up in each', () => {
  expect(SHOTS.map(({ day }) => day)).toEqual(SHOTS.map(({ day }) => day).sort((a, b) => a - b));
  expect([SHOTS[0]?.day, SHOTS.at(-1)?.day]).toEqual([-6, 28]);
  for (const { name, day, time } of SHOTS)
    expect(degrees(Math.asin(sunOnDay(day, Number(time.slice(0, 2)))[2])), name).toBeGreaterThan(10);
});

test('the sun stands at noon where it does on 1 April', () => {
  // By the declination of about 4.3° on that day (common almanac figure, from memory): 90° - latitude + declination.
  const noon = 12 - (SITE.lon - 135) / 15;
  const [x, y, z] = sunOnDay(0, noon);
  expect(degrees(Math.asin(z))).toBeCloseTo(90 - SITE.lat + 4.3, 0);
  expect(bearingOf([0, 0, 0], [x, y, 0])).toBeCloseTo(180, 6);
});

test('a place of the house lies on the earth as far and where it lies from い一', () => {
  const [origin, along] = [
    positionOf([0, 0, 0], { east: 0, north: 0 }),
    positionOf([0, 1e5, 0], { east: 0, north: 0 }),
  ];
  expect(origin).toEqual({ lat: SITE.lat, lon: SITE.lon });
  const [north, east] = [
    (along.lat - origin.lat) * 111_200,
    (along.lon - origin.lon) * 111_200 * Math.cos((SITE.lat * Math.PI) / 180),
  ];
  expect(Math.hypot(north, east)).toBeCloseTo(100, 6);
  expect(degrees(Math.atan2(east, north))).toBeCloseTo(bearingOf([0, 0, 0], [0, 1e5, 0]), 6);
});
