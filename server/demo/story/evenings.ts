import { dayAfter } from '#domain/frame/invented/invented-house';
import type { Act } from './act.ts';
import { momentOf } from './build-time.ts';
import { tagChooser } from './choose-tags.ts';
import type { HousePlan } from './house-plan.ts';
import type { Ids } from './ids.ts';
import { NOTES } from './notes.ts';
import type { StoryPhoto } from './photo.ts';

/** What nobody has tagged, although photos show it: left to be found on the closing report. */
const LEFT = ['は一垂木', 'い通り内法貫'];

/** Photos are added in the evening of their day, then it is said what they show, then what the day was like. */
export function evenings(
  plan: HousePlan,
  raising: string,
  photos: readonly StoryPhoto[],
  { house, next }: Ids,
): Act[] {
  const choose = tagChooser(plan, new Set(LEFT));
  const byDay = photos.toSorted((a, b) => a.day - b.day);
  const added = byDay.map(({ name, fileName, day, by }, i): Act => {
    const earlier = byDay.slice(0, i).filter((photo) => photo.day === day).length;
    return { at: evening(raising, day, earlier), by, does: 'add-photo', photo: name, fileName };
  });
  const tagged = byDay
    .filter(({ isTagged }) => isTagged)
    .flatMap(({ name, day, by, truth }) =>
      choose(truth, dayAfter(raising, day)).map((choice): Act => {
        const tag = { id: next(), ...choice };
        return { at: evening(raising, day, TAGGING), by, does: 'tag', photo: name, tag };
      }),
    );
  const clocks = byDay
    .filter(({ showsClock }) => showsClock)
    .map(({ name, day, time, by }): Act => {
      const body = { id: next(), trueTime: momentOf(raising, day, time), withinS: 60, note: CLOCK_NOTE };
      const said = { does: 'say-of-photo', photo: name, path: 'clock-mark', body } as const;
      return { at: evening(raising, day, CLOCKS), by, ...said };
    });
  const noted = NOTES.map(({ day, by, text }): Act => {
    const path = `/houses/${house}/days/${dayAfter(raising, day)}/note`;
    return { at: evening(raising, day, NOTING), by, does: 'say', method: 'PUT', path, body: { text } };
  });
  return [...added, ...tagged, ...clocks, ...noted];
}

/** Minutes into the evening. */
const TAGGING = 20;
const CLOCKS = 40;
const NOTING = 50;
const CLOCK_NOTE = '現場の時計を一緒に写した。 The clock on site is in the picture.';
const evening = (raising: string, day: number, minute: number) =>
  momentOf(raising, day, `18:${String(minute).padStart(2, '0')}`);
