import type {
  GuestCoveringView,
  GuestMemberView,
  GuestPageView,
  GuestPictureView,
} from '#domain/contract/guests';
import type { ReportCoveringView } from '#domain/contract/report-views';
import type { MemberHistoryView } from '#domain/contract/views';
import { TRACKS, type Stage } from '#domain/frame/stage';
import type { z } from 'zod';
import type { Context } from './context.ts';
import { cropPhoto, cropTag } from './crop-photo.ts';
import { Failure } from './failure.ts';
import { readMemberHistory } from './members.ts';
import type { Guest, Sighting } from './record-store.ts';
import { readReportOfPhoto, reportOf } from './report.ts';

/** What a guest sees, built up of what the page needs: nothing else of the house is in it. */
export async function readGuestPage(context: Context, secret: string): Promise<GuestPageView> {
  const page = await pageOf(context, await holding(context, secret));
  await context.accounts.noteGuest(secret);
  return page;
}

/** A picture that the page shows, as JPEG of bare pixels: around the region of a tag, or the whole of it. */
export async function readGuestPicture(
  context: Context,
  secret: string,
  { photo, tag }: { photo: string; tag: string | undefined },
): Promise<Uint8Array> {
  const shown = await picturesOf(context, await holding(context, secret), photo);
  const one = shown.find((picture) => tag === undefined || picture.tag === tag);
  if (!one) throw new Failure('not-found', { what: 'photo' });
  return tag === undefined
    ? withoutName(cropPhoto(context, photo, 'percent:0,0,100,100', WHOLE_PX))
    : withoutName(cropTag(context, one.tag, CROP_PX));
}

/** Pixels across; enough to see the work, and no original. */
const WHOLE_PX = 1600;
const CROP_PX = 640;

/** Wrong, too old, ended, or no longer anybody's word: all the same to whoever asks. */
async function holding({ accounts, store, now }: Context, secret: string): Promise<Guest> {
  const id = await accounts.guestOf(secret);
  const guest = id === undefined ? undefined : await store.read.guest(id);
  const holds = guest?.isVouchedFor && !guest.ended && Date.parse(guest.until) > now().getTime();
  if (!holds) throw new Failure('not-found', { what: 'guest' });
  return guest;
}

async function pageOf(context: Context, guest: Guest): Promise<GuestPageView> {
  const { house, shows, label, until } = guest;
  const facts = await context.store.read.houseName(house);
  const page =
    'covering' in shows
      ? await coveringPage(context, house, shows.covering)
      : memberPage(await readMemberHistory(context, house, shows.mark));
  return { house: facts.name, zone: facts.zone, label, until, page };
}

async function coveringPage(context: Context, house: string, covering: string): Promise<GuestCoveringView> {
  const { read } = context.store;
  const material = await read.reportMaterial(house, { coverings: [covering] });
  const { days } = reportOf(context, material, await read.zone(house));
  const found = days.flatMap(({ coverings }) => coverings).find(({ id }) => id === covering);
  if (!found) throw new Failure('not-found', { what: 'guest' });
  const { name, kind, plannedDay, closedAt } = found;
  const { phase, without, takenBack } = found.standing;
  const { hidden, onRecord, gaps, lost, waived } = found.counts;
  return {
    ...{ shows: 'covering', name, kind, plannedDay, closedAt },
    standing: { phase, without, takenBack: takenBack && { at: takenBack.at, reason: takenBack.reason } },
    counts: { hidden, onRecord, gaps, lost, waived },
    lines: found.lines.map(toLine),
  };
}

/** The best come first; more than a few prove nothing more. */
const SHOWN = 3;

function toLine({
  mark,
  kind,
  place,
  least,
  state,
  missing,
  waiver,
  records,
}: z.infer<typeof ReportCoveringView>['lines'][number]): GuestCoveringView['lines'][number] {
  const pictures = new Map<string, GuestPictureView>();
  for (const { tag, photo, stage, instant } of records)
    if (!pictures.has(photo)) pictures.set(photo, { tag, photo, stage, instant });
  const accepted = waiver && {
    at: waiver.at,
    reason: waiver.reason,
    isTakenBack: waiver.takenBack !== null,
  };
  const shown = [...pictures.values()].slice(0, SHOWN);
  return { ...{ mark, kind, place, least, state, missing }, waiver: accepted, pictures: shown };
}

function memberPage({ member, stages, sightings, coverings }: MemberHistoryView): GuestMemberView {
  const { mark, kind, place, retired, track } = member;
  return {
    ...{ shows: 'member', mark, kind, place, retired, track },
    stages: stages.map(({ stage, after, by, contradicted }) => ({
      ...{ stage, contradicted, after: after && { instant: after.instant } },
      by: by && { instant: by.instant, stage: by.stage },
      pictures: picturesAt(stage, sightings),
    })),
    coverings: coverings.map(({ name, kind, plannedDay, closed }) => ({
      ...{ name, kind, plannedDay },
      closedAt: closed && closed.at,
    })),
  };
}

function picturesAt(at: Stage, sightings: readonly Pick<Sighting, 'tag' | 'capture'>[]): GuestPictureView[] {
  return sightings.flatMap(({ tag: { id, photo, stage, state }, capture }) =>
    state === 'standing' && stage === at
      ? [{ tag: id, photo, stage, instant: capture.state === 'dated' ? capture.instant : null }]
      : [],
  );
}

/** Those of one photo that the page shows. A page asks for dozens of them, so no more is read than decides on one. */
async function picturesOf(
  context: Context,
  { house, shows }: Guest,
  photo: string,
): Promise<GuestPictureView[]> {
  const pictures =
    'covering' in shows
      ? await picturesOfCovering(context, house, shows.covering, photo)
      : await picturesOfMember(context, house, shows.mark);
  return pictures.filter((picture) => picture.photo === photo);
}

/** By the lines of the members that the photo shows: all their tags decide which are the best. */
async function picturesOfCovering(
  context: Context,
  house: string,
  covering: string,
  photo: string,
): Promise<GuestPictureView[]> {
  const { coverings } = await readReportOfPhoto(context, house, photo);
  const lines = coverings.find(({ id }) => id === covering)?.lines ?? [];
  return lines.flatMap((line) => toLine(line).pictures);
}

async function picturesOfMember(
  { store: { read } }: Context,
  house: string,
  mark: string,
): Promise<GuestPictureView[]> {
  const member = await read.member(house, mark);
  if (!member) return [];
  const sightings = await read.sightings(house, mark);
  return TRACKS[member.track].flatMap((stage) => picturesAt(stage, sightings));
}

/** What a damaged file is called is nothing to a guest. */
async function withoutName(making: Promise<Uint8Array>): Promise<Uint8Array> {
  try {
    return await making;
  } catch (error) {
    if (error instanceof Failure) throw new Failure('picture-not-ready');
    throw error;
  }
}
