import type { Camera, CameraView, ClockMarkFacts, ClockMarkView } from '#domain/contract/clock';
import type { AccountView } from '#domain/contract/views';
import { correctClock, isSetBetween, orderMarks } from '#domain/photo/clock-correction';
import { readClock, readMarks } from '#domain/photo/clock-reading';
import { cameraKey } from '#domain/photo/camera-key';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import { assertPast } from './assert-past.ts';
import type { CameraFacts, KeptMark } from './record-store.ts';
import { assertRepeated } from './same-content.ts';

/** Says what the time truly was when the clock in this photo's camera showed what its file says. */
export async function markClock(
  context: Context,
  account: AccountView,
  place: { house: string; photo: string; mark: string },
  facts: ClockMarkFacts,
): Promise<ClockMarkView> {
  assertPast(context, facts.trueTime);
  return context.store.write(place.house, speaker(account), async (writing) => {
    const zone = await writing.zone(place.house);
    const before = await writing.clockMark(place.mark);
    if (before) {
      const { trueTime, withinS, note, photo } = before;
      assertRepeated(place.mark, { trueTime, withinS, note, photo }, { ...facts, photo: place.photo });
      return markView(before, zone);
    }
    const photo = await writing.photo(place.photo);
    if (!photo) throw new Failure('not-found', { what: 'photo' });
    const { make, model, serial, wallTime, offsetMinutes } = photo.readings;
    const camera: Camera = { make, model, serial };
    if (cameraKey(camera) === null) throw new Failure('clock-mark-without-camera', { file: photo.fileName });
    if (wallTime === null || readClock(photo.readings, zone) === null)
      throw new Failure('clock-mark-without-time', { file: photo.fileName });
    const shown = { wallTime, offsetMinutes };
    const payload = { ...facts, mark: place.mark, photo: place.photo, camera, shown };
    await writing.say({ kind: 'clock.marked', version: 1, payload });
    const kept = await writing.clockMark(place.mark);
    if (!kept) throw new Failure('not-found', { what: 'clockMark' });
    return markView(kept, zone);
  });
}

export async function withdrawClockMark(
  context: Context,
  account: AccountView,
  place: { house: string; mark: string },
  reason: string,
): Promise<void> {
  await context.store.write(place.house, speaker(account), async (writing) => {
    const before = await writing.clockMark(place.mark);
    if (!before) throw new Failure('not-found', { what: 'clockMark' });
    if (!before.stands) return;
    const payload = { mark: place.mark, camera: before.camera, reason };
    await writing.say({ kind: 'clock.withdrawn', version: 1, payload });
  });
}

export async function listCameras(
  context: Context,
  house: string,
): Promise<{ cameras: CameraView[]; unnamed: number }> {
  const zone = await context.store.read.zone(house);
  const { cameras, unnamed } = await context.store.read.cameras(house);
  const nowMs = context.now().getTime();
  return { cameras: cameras.map((facts) => cameraView(facts, zone, nowMs)), unnamed };
}

function cameraView({ marks: said, ...facts }: CameraFacts, zone: string, nowMs: number): CameraView {
  const read = readMarks(said, zone);
  const marks = orderMarks(read);
  const now = correctClock(nowMs, read);
  const kept = new Map(said.map((mark) => [mark.id, mark]));
  return {
    ...facts,
    marks: marks.flatMap(({ id }) => {
      const mark = kept.get(id);
      return mark ? [markView(mark, zone)] : [];
    }),
    now: now && {
      seconds: now.deltaMs / 1000,
      uncertaintyS: now.uncertaintyS,
      basis: now.basis,
      marks: [...now.marks],
    },
    setBetween: marks.slice(1).flatMap((b, i) => {
      const a = marks[i];
      return a && isSetBetween(a, b) ? [{ from: a.id, to: b.id }] : [];
    }),
  };
}

function markView(
  { id, photo, shown, trueTime, withinS, note, by, at }: KeptMark,
  zone: string,
): ClockMarkView {
  const [read] = readMarks([{ id, shown, trueTime, withinS }], zone);
  return { id, photo, shown, trueTime, withinS, note, by, at, seconds: (read?.deltaMs ?? 0) / 1000 };
}
