import type { ColumnType, Generated, Selectable } from 'kysely';
import type { FindingKind } from '#domain/record/findings/kinds';
import type { Capture } from '#domain/contract/capture';
import type { Finding } from '#domain/record/findings/finding';
import type { Place, ReadPlace } from '#domain/contract/place';
import type { Lacking, ReleaseFacts } from '#domain/contract/hold';
import type { HoldState } from '#domain/record/hold-phase';
import type { Person, Readings, Role, Site } from '#domain/contract/shapes';
import type { ShownStretch, StatedGrid } from '#domain/contract/frame-shapes';
import type { Mark } from '#domain/frame/mark';
import type { SetOut } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import type { StatedRequirement } from '#domain/record/requirements-of';
import type { Stretch } from '#domain/record/stretches';
import type { StampTroubleReason } from '#domain/contract/stamps';
import type { TermFacts } from '#domain/contract/terms';
import type { DatedBy } from '#domain/contract/clock';
import type { Stage, Track } from '#domain/frame/stage';
import type { CaptureDoubt } from '#domain/photo/capture-doubts';
import type { SaidDate } from '#domain/photo/date-photo';
import type { LegibilityMeasures, LegibilityReason, Verdict } from '#domain/photo/legibility';
import type { Region } from '#domain/photo/region';

/** The tables as Kysely sees them: camel case here, snake case in SQL. */

/** jsonb: written as JSON text, read as a value. */
type Json<T> = ColumnType<T, string, string>;
type JsonOrNull<T> = ColumnType<T | null, string | null, string | null>;
type Time = ColumnType<Date, Date | string, Date | string>;
type TimeOrNull = ColumnType<Date | null, Date | string | null, Date | string | null>;
/** A calendar day, always as text: a Date would carry the server's zone. */
type DayOrNull = string | null;

export interface Tables {
  person: {
    id: string;
    name: string;
    email: string;
    emailVerified: Generated<boolean>;
    keeper: Generated<boolean>;
    createdAt: Generated<Date>;
    updatedAt: Generated<Date>;
  };
  /** Written by the sign-in library. */
  personSession: {
    id: string;
    userId: string;
    createdAt: Date;
    updatedAt: Date;
    expiresAt: Date;
    userAgent: string | null;
  };
  personCredential: { id: string; userId: string; accountId: string; providerId: string; password: string };
  accountLink: {
    id: Generated<string>;
    secretHash: Buffer;
    purpose: 'first-account' | 'join-house' | 'new-password';
    /** Whose password; of the other purposes null. */
    personId: string | null;
    email: string | null;
    houseId: string | null;
    role: Role | null;
    madeBy: JsonOrNull<Person>;
    createdAt: Time;
    expiresAt: Time;
    usedAt: TimeOrNull;
  };
  accessToken: {
    id: string;
    personId: string;
    name: string;
    secretHash: Buffer;
    createdAt: Time;
    lastUsedAt: TimeOrNull;
    expiresAt: TimeOrNull;
  };
  guestSecret: { secretHash: Buffer; guestId: string; lastUsedAt: TimeOrNull };
  instanceSecret: { name: string; value: string };
  calendarLink: {
    houseId: string;
    personId: string;
    lang: 'en' | 'ja';
    secretHash: Buffer;
    createdAt: Time;
    lastReadAt: TimeOrNull;
  };
  /** What a calendar last said of a covering; content is a hash. */
  calendarEntry: { coveringId: string; houseId: string; day: string; content: string; changedAt: Time };
  stampTrouble: { houseId: string; at: Time; reason: StampTroubleReason };
  ledger: { houseId: string; size: number; frontier: Buffer; head: Buffer };
  ledgerEntry: {
    houseId: string;
    seq: number;
    at: Time;
    kind: string;
    canonical: string;
    leaf: Buffer;
    head: Buffer;
  };
  statementSubject: { houseId: string; seq: number; subject: string };
  house: {
    id: string;
    name: string;
    zone: string;
    firstDay: DayOrNull;
    site: JsonOrNull<Site>;
    createdAt: Time;
    grid: JsonOrNull<StatedGrid>;
    fourEyes: Generated<boolean>;
    requirements: ColumnType<StatedRequirement[], string | undefined, string>;
  };
  houseRole: { houseId: string; personId: string; name: string; role: Role };
  member: {
    houseId: string;
    mark: string;
    kind: string;
    name: string;
    place: string;
    track: Track | null;
    note: string;
    other: Json<Record<string, string>>;
    retired: boolean;
    setOut: JsonOrNull<SetOut>;
  };
  photo: {
    id: string;
    houseId: string;
    sha256: string;
    bytes: number;
    mediaType: string;
    fileName: string;
    width: number;
    height: number;
    readings: Json<Readings>;
    addedAt: Time;
    addedBy: JsonOrNull<Person>;
    capture: Json<Capture>;
    capturedAt: TimeOrNull;
    captureDay: DayOrNull;
    doubt: CaptureDoubt | null;
    place: ColumnType<ReadPlace, string | undefined, string>;
    devicePosition: JsonOrNull<NonNullable<Place['device']>>;
    /** cameraKey of its readings. */
    camera: string | null;
    uncertaintyS: number | null;
    datedBy: DatedBy | null;
    byHand: JsonOrNull<SaidDate>;
  };
  /** Marks that were withdrawn stay, so that their ids are not used again. */
  clockMark: {
    id: string;
    houseId: string;
    photoId: string;
    camera: string;
    shownWall: string;
    shownOffset: number | null;
    trueTime: Time;
    withinS: number;
    note: string;
    seq: number;
    saidAt: Time;
    saidBy: JsonOrNull<Person>;
    withdrawnAt: TimeOrNull;
  };
  tag: {
    id: string;
    houseId: string;
    photoId: string;
    mark: string;
    stage: Stage;
    region: Json<Region>;
    stretch: JsonOrNull<ShownStretch>;
    note: string;
    saidAt: Time;
    saidBy: JsonOrNull<Person>;
    supersedes: string | null;
    state: 'standing' | 'superseded' | 'withdrawn';
    endedAt: TimeOrNull;
    endedBy: JsonOrNull<Person>;
    endReason: string | null;
    disputedAt: ColumnType<Date | null, Date | string | undefined, Date | string>;
    disputedBy: ColumnType<Person | null, string | undefined, string | null>;
    disputeReason: ColumnType<string | null, string | undefined, string>;
  };
  covering: {
    id: string;
    houseId: string;
    name: string;
    kind: string;
    plannedDay: DayOrNull;
    note: string;
    changedAt: Time;
    closedAt: TimeOrNull;
    closedBy: JsonOrNull<Person>;
    closeNote: string | null;
    zone: JsonOrNull<Zone>;
    exceptMarks: Json<Mark[]>;
    holdState: Generated<HoldState>;
    holdAt: ColumnType<Date | null, undefined, Date | string | null>;
    holdBy: ColumnType<Person | null, undefined, string | null>;
    holdNote: ColumnType<string | null, undefined, string | null>;
    holdLacking: ColumnType<Lacking[], undefined, string>;
    releaseId: ColumnType<string | null, undefined, string | null>;
    closedRelease: ColumnType<string | null, undefined, string | null>;
    closedWithout: ColumnType<string | null, undefined, string | null>;
  };
  release: {
    id: string;
    houseId: string;
    coveringId: string;
    seq: number;
    saidAt: Time;
    saidBy: JsonOrNull<Person>;
    facts: Json<ReleaseFacts>;
    withdrawnAt: TimeOrNull;
    withdrawnBy: JsonOrNull<Person>;
    withdrawReason: string | null;
  };
  /** stretch null: the whole member. byZone: computed from the zone, by projection/zone-hides. */
  coveringHides: {
    coveringId: string;
    houseId: string;
    mark: string;
    least: Stage;
    position: number;
    stretch: JsonOrNull<Stretch>;
    views: number;
    byZone: boolean;
  };
  protection: {
    id: string;
    houseId: string;
    name: string;
    what: string;
    zone: JsonOrNull<Zone>;
    exceptMarks: Json<Mark[]>;
    laidAt: Time;
    laidBy: JsonOrNull<Person>;
    liftingDay: DayOrNull;
    note: string;
    changedAt: Time;
    liftedAt: TimeOrNull;
    liftedBy: JsonOrNull<Person>;
    liftNote: string | null;
    /** What was withdrawn never lay there. */
    withdrawnAt: TimeOrNull;
    withdrawnBy: JsonOrNull<Person>;
    withdrawReason: string | null;
  };
  /** stretch null: the whole member. byZone: computed from the zone, by projection/protection-hides. */
  protectionHides: {
    protectionId: string;
    houseId: string;
    mark: string;
    stretch: JsonOrNull<Stretch>;
    byZone: boolean;
    position: number;
  };
  dayNote: {
    houseId: string;
    day: string;
    personId: string;
    saidBy: JsonOrNull<Person>;
    saidAt: Time;
    text: string;
  };
  /** Shows one covering or one member: the other is null. */
  guest: {
    id: string;
    houseId: string;
    coveringId: string | null;
    mark: string | null;
    label: string;
    until: Time;
    admittedAt: Time;
    admittedBy: JsonOrNull<Person>;
    endedAt: TimeOrNull;
    endedBy: JsonOrNull<Person>;
    endReason: string | null;
  };
  term: {
    houseId: string;
    id: string;
    facts: Json<TermFacts>;
    saidAt: Time;
    saidBy: JsonOrNull<Person>;
  };
  findingAnswer: {
    houseId: string;
    key: string;
    kind: FindingKind;
    basis: string;
    reason: string;
    saidBy: JsonOrNull<Person>;
    saidAt: Time;
  };
  /** Made of the other tables, by findings/refresh. */
  finding: {
    houseId: string;
    key: string;
    kind: FindingKind;
    scope: string;
    basis: string;
    content: Json<Finding>;
    at: TimeOrNull;
  };
  findingThing: { houseId: string; key: string; thing: string };
  projectionVersion: { version: number };
  /** Grows with every finished picture of the house. */
  picturesMade: { houseId: string; made: number };
  picture: {
    photoId: string;
    state: 'ready' | 'damaged' | 'unreadable';
    madeAt: Generated<Date>;
    /** 64 characters 0 and 1. */
    hash: string | null;
    sharpness: number | null;
  };
  legibility: {
    tagId: string;
    houseId: string;
    measures: JsonOrNull<LegibilityMeasures>;
    verdict: Verdict | null;
    reasons: Json<LegibilityReason[]>;
    version: number;
  };
}

export type Row<T extends keyof Tables> = Selectable<Tables[T]>;

/** The tables that follow from the ledger alone, in an order in which they can be emptied. */
export const PROJECTED = [
  'statementSubject',
  'guest',
  'findingAnswer',
  'term',
  'coveringHides',
  'release',
  'covering',
  'protectionHides',
  'protection',
  'dayNote',
  'tag',
  'clockMark',
  'photo',
  'member',
  'houseRole',
  'house',
] as const satisfies readonly (keyof Tables)[];
