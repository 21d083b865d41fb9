import type { BodyInput } from '#domain/contract/routes';
import type { CoveringKind } from '#domain/contract/shapes';
import type { CoveringView, MemberView } from '#domain/contract/views';
import { parseMark } from '#domain/frame/mark';
import { TRACKS, type Stage, type Track } from '#domain/frame/stage';
import type { LengthUnit } from '#domain/frame/length';
import { defaultLeast } from '#domain/record/default-least';
import { NO_ZONE, readZone, zoneDraft, type ZoneDraft } from './zone-draft.ts';

/** As in the contract, repeated so that the browser need not load the schema library; a test compares them. */
export const KINDS = [
  'plaster',
  'floor',
  'ceiling',
  'roof-boards',
  'other',
] as const satisfies readonly CoveringKind[];

/** A covering as it is being filled in. */
export interface CoveringDraft {
  readonly name: string;
  readonly kind: CoveringKind;
  /** YYYY-MM-DD or empty. */
  readonly plannedDay: string;
  readonly note: string;
  /** What lies in it is hidden; null: only what is listed. */
  readonly zone: ZoneDraft;
  /** Members in the zone that stay visible. */
  readonly except: ReadonlySet<string>;
  /** Listed by hand. */
  readonly hides: ReadonlyMap<string, Least>;
}

/** `isChosen`: a person has set it, so a change of the kind of covering does not touch it. */
export interface Least {
  readonly stage: Stage;
  readonly isChosen: boolean;
}

type MemberFactsHere = Pick<MemberView, 'mark' | 'track'>;

export type CoveringEvent =
  | { type: 'write'; field: 'name' | 'plannedDay' | 'note'; text: string }
  | { type: 'choose-kind'; kind: CoveringKind; tracks: ReadonlyMap<string, Track> }
  | { type: 'tick'; members: readonly MemberFactsHere[] }
  | { type: 'draw-zone'; zone: ZoneDraft }
  | { type: 'leave-out'; mark: string; isOut: boolean }
  | { type: 'untick'; marks: readonly string[] }
  | { type: 'choose-least'; mark: string; stage: Stage }
  | { type: 'choose-least-of-all'; stage: Stage; tracks: ReadonlyMap<string, Track> };

export const EMPTY_DRAFT: CoveringDraft = {
  name: '',
  kind: 'plaster',
  plannedDay: '',
  note: '',
  zone: NO_ZONE,
  except: new Set(),
  hides: new Map(),
};

export function draftOf(covering: CoveringView, unit: LengthUnit): CoveringDraft {
  const { name, kind, plannedDay, note, zone, except, hides } = covering;
  const listed = hides.filter(({ byZone }) => !byZone);
  const stages = listed.map(({ mark, least }) => [mark, { stage: least, isChosen: true }] as const);
  const space = { zone: zoneDraft(zone, unit), except: new Set<string>(except) };
  return { name, kind, plannedDay: plannedDay ?? '', note, ...space, hides: new Map(stages) };
}

export function reduceCovering(draft: CoveringDraft, event: CoveringEvent): CoveringDraft {
  switch (event.type) {
    case 'write':
      return { ...draft, [event.field]: event.text };
    case 'choose-kind':
      return { ...draft, kind: event.kind, hides: proposeAnew(draft.hides, event.kind, event.tracks) };
    case 'draw-zone':
      return { ...draft, zone: event.zone };
    case 'leave-out': {
      const except = new Set(draft.except);
      if (event.isOut) except.add(event.mark);
      else except.delete(event.mark);
      return { ...draft, except };
    }
    case 'tick':
      return { ...draft, hides: tick(draft, event.members) };
    case 'untick': {
      const gone = new Set(event.marks);
      return { ...draft, hides: new Map([...draft.hides].filter(([mark]) => !gone.has(mark))) };
    }
    case 'choose-least':
      return {
        ...draft,
        hides: new Map(draft.hides).set(event.mark, { stage: event.stage, isChosen: true }),
      };
    case 'choose-least-of-all':
      return { ...draft, hides: chooseForAll(draft, event.stage, event.tracks) };
  }
}

/** The stages that can be asked of a member: those of its track that show it before this covering hides it. */
export function offeredStages(kind: CoveringKind, track: Track): readonly Stage[] {
  const stages: readonly Stage[] = TRACKS[track];
  return kind === 'plaster' ? stages.filter((stage) => stage !== 'plastered') : stages;
}

function tick(draft: CoveringDraft, members: readonly MemberFactsHere[]): CoveringDraft['hides'] {
  const hides = new Map(draft.hides);
  for (const { mark, track } of members) {
    if (!hides.has(mark)) hides.set(mark, { stage: defaultLeast(draft.kind, track), isChosen: false });
  }
  return hides;
}

function proposeAnew(
  hides: CoveringDraft['hides'],
  kind: CoveringKind,
  tracks: ReadonlyMap<string, Track>,
): CoveringDraft['hides'] {
  const propose = ([mark, least]: [string, Least]): [string, Least] => {
    const track = tracks.get(mark);
    const stays = track === undefined || (least.isChosen && offeredStages(kind, track).includes(least.stage));
    return [mark, stays ? least : { stage: defaultLeast(kind, track), isChosen: false }];
  };
  return new Map([...hides].map(propose));
}

function chooseForAll(
  draft: CoveringDraft,
  stage: Stage,
  tracks: ReadonlyMap<string, Track>,
): CoveringDraft['hides'] {
  const choose = ([mark, least]: [string, Least]): [string, Least] => {
    const track = tracks.get(mark);
    const passes = track !== undefined && offeredStages(draft.kind, track).includes(stage);
    return [mark, passes ? { stage, isChosen: true } : least];
  };
  return new Map([...draft.hides].map(choose));
}

/** Marks out of pasted text: one a line, or with commas (、，,), semicolons or tabs between them; each once. */
export function pastedMarks(text: string, isKnown: (mark: string) => boolean): string[] {
  const pieces = text.split(/[\n\r\t,;、，；]+/u).map((piece) => piece.trim());
  const marks = pieces.filter((piece) => piece !== '').flatMap((piece) => marksOf(piece, isKnown));
  return [...new Set(marks)];
}

/** A mark may hold a space; where the schedule has no such mark, the space stands between two. */
function marksOf(piece: string, isKnown: (mark: string) => boolean): string[] {
  const whole = normalMark(piece);
  return isKnown(whole) ? [whole] : piece.split(/\s+/u).map(normalMark);
}

function normalMark(text: string): string {
  const parsed = parseMark(text);
  return parsed.ok ? parsed.mark : text;
}

/** Whether the draft says something else than what it began with; the order of the marks is no difference. */
export function isChanged(draft: CoveringDraft, start: CoveringDraft): boolean {
  return contentOf(draft) !== contentOf(start);
}

function contentOf({ hides, except, ...rest }: CoveringDraft): string {
  const stages = [...hides].map(([mark, { stage }]) => `${mark}\0${stage}`).sort();
  return JSON.stringify([
    rest.name,
    rest.kind,
    rest.plannedDay,
    rest.note,
    rest.zone,
    [...except].sort(),
    stages,
  ]);
}

/** What is no zone yet must not come here. */
export function factsOfDraft(draft: CoveringDraft, unit: LengthUnit): BodyInput<'changeCovering'> {
  const { name, kind, plannedDay, note, except, hides } = draft;
  const read = readZone(draft.zone, unit);
  const zone = read.ok ? read.zone : null;
  return {
    name: name.trim(),
    kind,
    plannedDay: plannedDay === '' ? null : plannedDay,
    note,
    zone: zone && { ...zone },
    except: zone ? [...except] : [],
    hides: [...hides].map(([mark, { stage }]) => ({ mark, least: stage })),
  };
}
