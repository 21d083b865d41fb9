import type { Capture } from '#domain/contract/capture';
import type { FindingView, FindingsView, FINDING_STATES } from '#domain/contract/findings';
import type { FindingKind } from '#domain/record/findings/kinds';
import type { GuestShows } from '#domain/contract/guests';
import type { BriefDayView, JournalView } from '#domain/contract/journal-views';
import type { Camera, CameraView, ClockMarkView } from '#domain/contract/clock';
import type { ReleaseFacts } from '#domain/contract/hold';
import type { ReleaseView } from '#domain/contract/review-views';
import type { MediaType, MemberFacts, Person, Role } from '#domain/contract/shapes';
import type { KindSightingView, TermView } from '#domain/contract/terms';
import type { AlikePhotoView } from '#domain/contract/alike-views';
import type {
  CoveringView,
  DaySummaryView,
  DayView,
  HouseView,
  LedgerEntryView,
  MemberView,
  PersonInHouseView,
  PhotoPlaceView,
  PhotoView,
  TagView,
} from '#domain/contract/views';
import type { HouseStateView, StatementEvent } from '#domain/contract/house-events';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import type { FrameMemberView } from '#domain/contract/frame-views';
import type { GridReader } from '#domain/frame/grid-reader';
import type { Axis } from '#domain/frame/set-out';
import type { LayerCovering } from '#domain/record/layers';
import type { ReportMember } from '#domain/record/report-member';
import type { StatedRequirement } from '#domain/record/requirements-of';
import type { Protection } from '#domain/record/protection';
import type { ProtectionView } from '#domain/contract/protection';
import type { StampsView } from '#domain/contract/stamps';
import type { Stage } from '#domain/frame/stage';
import type { Entry, Statement, StatementKind } from '#domain/ledger/statements';
import type { DatingGrounds } from '#domain/photo/date-photo';
import type { StandingTag } from '#domain/record/requirement';
import type { HiddenNow } from '#domain/record/release';
import type { WaivedMember } from '#domain/record/waived';
import type { ArchiveMaterial, LedgerExtent } from './archive/archive-material.ts';

/** What the services need of the record; server/storage implements it. */

/** `newest-day`: the last day first, each day in order of capture. */
export type PhotoOrder = 'capture' | 'newest-day';

/** Which photos; whatever is given must hold. `by` is the id of whoever added them. */
export interface PhotoFilter {
  readonly dated?: boolean | undefined;
  readonly day?: string | undefined;
  readonly mark?: string | undefined;
  readonly stage?: Stage | undefined;
  readonly by?: string | undefined;
  readonly untagged?: boolean;
}

/** Which of those that fit: from behind `after`, without the first `offset`. */
export interface PhotoWindow {
  readonly order?: PhotoOrder;
  readonly after?: string | undefined;
  readonly offset?: number;
  readonly limit: number;
}

/** How many photos each day has, the newest day first, and where in it one of them stands. */
export interface PhotoCounts {
  readonly days: { day: string; photos: number }[];
  readonly undated: number;
  readonly place: { day: string | null; position: number } | null;
}

export interface PhotoPage {
  readonly photos: PhotoView[];
  readonly total: number;
  readonly next: string | null;
}

export interface Sighting {
  readonly tag: TagView;
  readonly fileName: string;
  readonly capture: Capture;
  /** See `cameraKey`. */
  readonly camera: string | null;
}

/** A region that shows a member of some kind. */
export type KindSighting = Omit<KindSightingView, 'crop'>;

/** A covering that decides with others from when a member is out of sight. */
export type LayerMaterial = Omit<LayerCovering, 'closedAt' | 'closedDay'> & {
  readonly closed: { readonly at: string } | null;
};

/** The plain values of which the closing report is made. */
export interface ReportMaterial {
  readonly members: readonly ReportMember[];
  readonly coverings: readonly (CoveringView & {
    readonly waived: readonly WaivedMember[];
    /** What the release that stands over an open one speaks of. */
    readonly released: readonly HiddenNow[] | null;
  })[];
  /** Not among them, but closed over the same members. */
  readonly beside: readonly LayerMaterial[];
  readonly tags: readonly StandingTag[];
  /** What lies over these members, or has. */
  readonly protection: readonly Protection[];
  /** null: the house has no grid. */
  readonly reader: GridReader | null;
}

/** Which coverings, with what they hide: 'all' has every member of the house besides. */
export type ReportPart =
  | 'all'
  | 'open'
  | { readonly coverings: readonly string[] }
  /** Of each covering what it hides of the members that were ever tagged on this photo. */
  | { readonly photo: string };

/** Which findings; whatever is given must hold. */
export interface FindingFilter {
  readonly kind?: FindingKind | undefined;
  readonly state?: (typeof FINDING_STATES)[number] | undefined;
  readonly keys?: readonly string[] | undefined;
  readonly photo?: string | undefined;
  readonly mark?: string | undefined;
  readonly covering?: string | undefined;
  readonly offset?: number;
  readonly limit: number;
}

export type DayNote = DayView['notes'][number] & { readonly day: string };

/** A day with its notes in full. */
export type DayFacts = Omit<BriefDayView, 'notes'> & { readonly notes: readonly DayNote[] };

/** A clock mark as it is kept. */
export type KeptMark = Omit<ClockMarkView, 'seconds'> & { readonly camera: Camera };

export type CameraFacts = Omit<CameraView, 'marks' | 'now' | 'setBetween'> & {
  readonly marks: readonly KeptMark[];
};

export type OwnedThing = 'house' | 'photo' | 'tag' | 'covering' | 'release' | 'protection' | 'clockMark';

/** A release as it was said, with what it is of as it is now. */
export interface KeptRelease extends Pick<
  ReleaseView,
  'seq' | 'headAfter' | 'at' | 'by' | 'house' | 'withdrawn' | 'ended'
> {
  readonly facts: ReleaseFacts;
  readonly covering: Omit<ReleaseView['covering'], 'id'>;
}

export type TagDoubt = ReleaseView['doubts'][number];
export type RoleSince = ReleaseView['roles'][number];

/** A release by its place in the ledger, with the tags that it rests on and the members of which it names parts. */
export interface ReleaseOf {
  readonly house: string;
  readonly seq: number;
  readonly tags: readonly { readonly id: string; readonly photo: string }[];
  readonly marks: readonly string[];
}

/** What had been said before a release. */
export interface ReleaseGround {
  readonly doubts: readonly TagDoubt[];
  readonly roles: readonly RoleSince[];
  /** null: there was no grid. */
  readonly reader: GridReader | null;
  readonly axes: ReadonlyMap<string, Axis | null>;
}

/** Members that were ever tagged on a photo, or all. */
export type FramePart = 'all' | { readonly photo: string };

/** Who may read one covering or one member without an account. */
export interface Guest {
  readonly id: string;
  readonly house: string;
  readonly shows: GuestShows;
  /** Of the covering, or the mark. */
  readonly name: string;
  readonly label: string;
  readonly until: string;
  readonly admittedAt: string;
  readonly by: Person | null;
  readonly ended: boolean;
  /** Whether whoever made the link keeps the record: a link is somebody's word and holds no longer. */
  readonly isVouchedFor: boolean;
}

/** Reads the tables; inside a write it sees what was said so far. */
export interface RecordReader {
  /** The house of a thing and the person's role in it; undefined without a role, as if there were no such thing. */
  access(thing: OwnedThing, id: string, person: string): Promise<{ house: string; role: Role } | undefined>;
  roleIn(house: string, person: string): Promise<Role | undefined>;
  house(house: string, person: string): Promise<HouseView | undefined>;
  houses(person: string): Promise<HouseView[]>;
  /** Houses of which no owner has an account any more. */
  housesWithoutOwner(): Promise<string[]>;
  hasHouse(house: string): Promise<boolean>;
  zone(house: string): Promise<string>;
  houseName(house: string): Promise<{ name: string; zone: string }>;
  people(house: string): Promise<PersonInHouseView[]>;
  /** One, whether or not the link still holds. */
  guest(guest: string): Promise<Guest | undefined>;
  /** Those whose links hold at `now`, the first that ends first. */
  guests(house: string, now: Date): Promise<Guest[]>;

  members(house: string): Promise<MemberView[]>;
  member(house: string, mark: string): Promise<MemberView | undefined>;
  grid(house: string): Promise<StatedGrid | null>;
  requirements(house: string): Promise<readonly StatedRequirement[]>;
  /** Where each member lies, in space or why not, and the days on which its furthest stage changed. */
  frameMembers(house: string, zone: string, part?: FramePart): Promise<FrameMemberView[]>;
  schedule(house: string): Promise<{ facts: MemberFacts; retired: boolean; tags: number }[]>;
  isReferredTo(house: string, mark: string): Promise<boolean>;

  photo(photo: string): Promise<PhotoView | undefined>;
  photoByContent(house: string, sha256: string): Promise<PhotoView | undefined>;
  photos(house: string, filter: PhotoFilter, window: PhotoWindow): Promise<PhotoPage>;
  photoCounts(house: string, filter: PhotoFilter, place?: string): Promise<PhotoCounts>;
  photoOrder(house: string, filter: PhotoFilter): Promise<string[]>;
  /** Whoever has added photos, under the name that the latest of them gives. */
  adders(house: string): Promise<(Person & { photos: number })[]>;
  /** In order of capture, those that have a position of file or device, and how many have none. */
  photoPlaces(house: string, day?: string): Promise<{ photos: PhotoPlaceView[]; without: number }>;
  photosWithoutPictures(): Promise<string[]>;
  photoFile(
    photo: string,
  ): Promise<{ house: string; sha256: string; mediaType: MediaType; fileName: string } | undefined>;

  /** All by which the photo's time is decided, as it stands. */
  grounds(photo: string): Promise<DatingGrounds | undefined>;
  /** A clock mark, whether it stands or not. */
  clockMark(mark: string): Promise<(KeptMark & { readonly stands: boolean }) | undefined>;
  /** The cameras that photos name; marks that stand, in the order of saying. */
  cameras(house: string): Promise<{ cameras: CameraFacts[]; unnamed: number }>;
  /** Those of its burst and those almost identical, with the sharpest of all. */
  alike(photo: string): Promise<{ photos: AlikePhotoView[]; sharpest: string | null }>;

  tag(tag: string): Promise<TagView | undefined>;
  tagsOn(photo: string): Promise<TagView[]>;
  sightings(house: string, mark: string): Promise<Sighting[]>;
  /** These tags, whether they stand or not, in order of capture, undated last. */
  sightingsOf(tags: readonly string[]): Promise<Sighting[]>;

  covering(covering: string): Promise<CoveringView | undefined>;
  coverings(house: string): Promise<CoveringView[]>;
  /** Open coverings that wait for an inspection, or were refused at one; the longest waiting first. */
  holds(house: string, limit: number): Promise<JournalView['holds']>;
  /** Also one that was taken back. */
  release(release: string): Promise<KeptRelease | undefined>;
  releaseGround(of: ReleaseOf): Promise<ReleaseGround>;
  /** One, also when it was withdrawn. */
  protection(protection: string): Promise<ProtectionView | undefined>;
  /** The latest laid first, without those that were withdrawn; over one member only, where one is named. */
  protections(house: string, mark?: string): Promise<ProtectionView[]>;
  /** By covering, what these releases accept without a record. */
  waived(releases: readonly string[]): Promise<Map<string, WaivedMember[]>>;
  reportMaterial(house: string, part?: ReportPart): Promise<ReportMaterial>;

  /** What the crew has entered or renamed. */
  terms(house: string): Promise<TermView[]>;
  /** Regions of members of a kind, the newest photo first. */
  kindSightings(
    house: string,
    kind: string,
    limit: number,
  ): Promise<{ sightings: KindSighting[]; total: number }>;

  findings(house: string, filter: FindingFilter): Promise<FindingView[]>;
  findingCounts(house: string): Promise<FindingsView['counts']>;

  days(house: string, zone: string): Promise<DaySummaryView[]>;
  /** Days with anything on them before this one, newest first. */
  daysBefore(house: string, zone: string, before: string, limit: number): Promise<string[]>;
  /** These days in their order; `pictures` a day and `marks` a stage at most. */
  briefDays(
    house: string,
    zone: string,
    days: readonly string[],
    limits: { pictures: number; marks: number },
  ): Promise<DayFacts[]>;
  notesAfter(house: string, day: string, limit: number): Promise<DayNote[]>;
  waiting(house: string, limits: { days: number; pictures: number }): Promise<JournalView['waiting']>;
  notes(house: string, day: string): Promise<DayView['notes']>;

  entries(house: string, from: number, limit: number): Promise<LedgerEntryView[]>;
  entriesAbout(house: string, subject: string): Promise<LedgerEntryView[]>;
  /** Doubts of tags of these members, and the answers to them. */
  doubtsAbout(house: string, marks: readonly string[]): Promise<LedgerEntryView[]>;
  /** The latest statement of these kinds about a subject. */
  lastAbout(house: string, subject: string, kinds: readonly StatementKind[]): Promise<Entry | undefined>;
  /** Of these subjects those about which a statement of these kinds came after the entry `after`. */
  subjectsAfter(
    house: string,
    subjects: readonly string[],
    said: { kinds: readonly StatementKind[]; after: number },
  ): Promise<string[]>;
  entriesBetween(house: string, from: Date, to: Date): Promise<LedgerEntryView[]>;
  houseState(house: string): Promise<HouseStateView>;
  /** The first `limit` from `from` on, without their words. */
  statementsFrom(house: string, from: number, limit: number): Promise<StatementEvent[]>;
  ledgerState(house: string): Promise<{ size: number; head: string }>;
  ledgerExtent(house: string): Promise<LedgerExtent>;
  /** The lines of entries `from` until before `to`, as they stand in a ledger file. */
  ledgerText(house: string, from: number, to: number): Promise<string>;
  /** How many photos there are, and the bytes of all their originals. */
  originals(house: string): Promise<{ count: number; bytes: number }>;
  archiveMaterial(house: string): Promise<ArchiveMaterial>;
  lastStamp(house: string): Promise<StampsView['last']>;
  /** The head as it stands; null where nothing but a stamp was said since the last one. */
  unstampedHead(house: string): Promise<{ size: number; head: string } | null>;
}

/** Inside one transaction that holds the house's lock. */
export interface HouseWriting extends RecordReader {
  readonly houseId: string;
  /** Appends a statement to the ledger and applies it to the tables. */
  say(statement: Statement): Promise<Entry>;
  /** Has thumbnail and preview made once this is committed, whether or not there were any before. */
  requestPictures(photo: string): Promise<void>;
  /** Has the regions of a photo's tags measured once this is committed. */
  requestLegibility(photo: string): Promise<void>;
  /** Has the tree head stamped once this is committed, where a time-stamp service is configured. */
  requestStamp(): Promise<void>;
}

/** An entry as it was written elsewhere: its exact text, and the tree head after it in hex. */
export interface RestoredEntry {
  readonly canonical: string;
  readonly head: string;
}

export interface RecordStore {
  readonly read: RecordReader;
  /** Runs `work` over the record as it is at one moment, whatever is said meanwhile. */
  snapshot<T>(work: (read: RecordReader) => Promise<T>): Promise<T>;
  /** Runs `work` under the house's lock, all or nothing; resolves once what was said is durable. Unknown house: NotFound. */
  write<T>(house: string, by: Person | null, work: (writing: HouseWriting) => Promise<T>): Promise<T>;
  /** The same for a house that is new; `work` sees `isNew` false when the id is in use. */
  open<T>(house: string, by: Person, work: (writing: HouseWriting, isNew: boolean) => Promise<T>): Promise<T>;
  /**
   * Gives this record a house by the entries of its ledger, all or nothing; resolves once they are durable, to false
   * where there is such a house already.
   */
  restore(house: string, entries: AsyncIterable<RestoredEntry>): Promise<boolean>;
}
