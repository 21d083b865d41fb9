import { z } from 'zod';
import { FindingKey, FindingKindShape, FindingSubjects } from '../contract/findings.ts';
import { StatedGrid } from '../contract/frame-shapes.ts';
import { Lacking, ReleaseFacts } from '../contract/hold.ts';
import { ProtectionFacts } from '../contract/protection.ts';
import { RequirementRow } from '../contract/requirements.ts';
import { GuestFacts } from '../contract/guests.ts';
import { DevicePosition } from '../contract/place.ts';
import { CameraShape, ClockMarkFacts, DatingFacts, ShownShape } from '../contract/clock.ts';
import {
  CoveringFacts,
  Day,
  HouseFacts,
  Id,
  Instant,
  LatLonShape,
  MarkShape,
  MemberFacts,
  PersonShape,
  PhotoFacts,
  PhotoFactsOfOneReader,
  RoleShape,
  SITE_RADIUS,
  Sha256,
  TagFacts,
  line,
  paragraph,
} from '../contract/shapes.ts';
import { TermFacts, TermId } from '../contract/terms.ts';

/** Before members had a place in space, coverings a zone, and tags a stretch. */
const PlainMember = MemberFacts.omit({ setOut: true });
const placed = <T extends object>(facts: T) => ({ ...facts, setOut: null });
const PlainTag = TagFacts.omit({ stretch: true });
const PlainCovering = CoveringFacts.omit({ zone: true, except: true }).extend({ covering: Id });
const listing = <T extends object>(facts: T) => ({ ...facts, zone: null, except: [] });
/** Before there were releases to close under. */
const PlainClosing = z.strictObject({ covering: Id, closedAt: Instant, note: paragraph(2000) });
const Import = z.strictObject({
  source: z.strictObject({ fileName: z.string().max(255), sha256: Sha256 }),
  added: z.array(MemberFacts),
  changed: z.array(MemberFacts),
  retired: z.array(MarkShape),
  badRows: z.number().int().min(0),
});
const PlainImport = Import.extend({ added: z.array(PlainMember), changed: z.array(PlainMember) });

/** Before a site had an extent. */
const PointHouse = HouseFacts.extend({ site: LatLonShape.nullable().default(null) }).transform(
  ({ site, ...facts }): HouseFacts => ({
    ...facts,
    site: site && { ...site, radiusM: SITE_RADIUS.default },
  }),
);

/**
 * Everything that can be said of a house, by kind and version. A version, once released, is never
 * altered or removed: a new shape is a new version beside it, and the older one then ends in a transform
 * that makes the newest payload of it, so that the projection knows only one.
 */
export const STATEMENTS = {
  'house.created': { 1: PointHouse, 2: HouseFacts },
  'house.changed': { 1: PointHouse, 2: HouseFacts },
  'role.granted': { 1: z.strictObject({ person: PersonShape, role: RoleShape }) },
  'role.withdrawn': { 1: z.strictObject({ person: PersonShape }) },
  'guest.admitted': { 1: GuestFacts.extend({ guest: Id, until: Instant }) },
  'guest.ended': { 1: z.strictObject({ guest: Id, reason: paragraph(1000) }) },
  'password.link-made': { 1: z.strictObject({ person: PersonShape, until: Instant }) },
  'password.renewed': {
    1: z.strictObject({
      person: PersonShape,
      linkBy: PersonShape.nullable().meta({ description: 'null: whoever runs the program.' }),
    }),
  },
  'schedule.imported': {
    1: PlainImport.transform(({ added, changed, ...rest }) => ({
      ...rest,
      added: added.map(placed),
      changed: changed.map(placed),
    })),
    2: Import,
  },
  'member.entered': { 1: PlainMember.transform(placed), 2: MemberFacts },
  'member.retired': { 1: z.strictObject({ mark: MarkShape }) },
  'member.removed': { 1: z.strictObject({ mark: MarkShape }) },
  'photo.added': {
    1: PhotoFactsOfOneReader.extend({ photo: Id }).transform(({ readings, ...facts }) => ({
      ...facts,
      readings: { ...readings, rivals: [] },
    })),
    2: PhotoFacts.extend({ photo: Id }),
  },
  'photo.position-added': { 1: DevicePosition.safeExtend({ photo: Id }) },
  'photo.dated': { 1: DatingFacts.extend({ photo: Id }) },
  'photo.dating-withdrawn': { 1: z.strictObject({ photo: Id, reason: line(1000) }) },
  'clock.marked': {
    1: ClockMarkFacts.extend({ mark: Id, photo: Id, camera: CameraShape, shown: ShownShape }),
  },
  'clock.withdrawn': { 1: z.strictObject({ mark: Id, camera: CameraShape, reason: line(1000) }) },
  'tag.placed': {
    1: PlainTag.extend({ tag: Id, photo: Id }).transform((facts) => ({ ...facts, stretch: null })),
    2: TagFacts.extend({ tag: Id, photo: Id }),
  },
  'tag.superseded': {
    1: PlainTag.extend({ tag: Id, photo: Id, supersedes: Id, was: MarkShape }).transform((facts) => ({
      ...facts,
      stretch: null,
    })),
    2: TagFacts.extend({ tag: Id, photo: Id, supersedes: Id, was: MarkShape }),
  },
  'tag.withdrawn': { 1: z.strictObject({ tag: Id, photo: Id, mark: MarkShape, reason: paragraph(1000) }) },
  'tag.disputed': { 1: z.strictObject({ tag: Id, photo: Id, mark: MarkShape, reason: line(1000) }) },
  'grid.stated': { 1: StatedGrid },
  'requirements.stated': { 1: z.strictObject({ rows: z.array(RequirementRow).max(2000) }) },
  'covering.planned': { 1: PlainCovering.transform(listing), 2: CoveringFacts.extend({ covering: Id }) },
  'covering.changed': { 1: PlainCovering.transform(listing), 2: CoveringFacts.extend({ covering: Id }) },
  'covering.closed': {
    1: PlainClosing.transform((facts) => ({ ...facts, release: null, without: null })),
    2: PlainClosing.extend({ release: Id.nullable(), without: line(1000).nullable() }),
  },
  'covering.reopened': { 1: z.strictObject({ covering: Id, reason: line(1000) }) },
  'covering.ready': { 1: z.strictObject({ covering: Id, note: paragraph(2000) }) },
  'covering.ready-withdrawn': { 1: z.strictObject({ covering: Id, reason: line(1000) }) },
  'covering.refused': {
    1: z.strictObject({ covering: Id, lacking: z.array(Lacking).max(20_000), note: paragraph(2000) }),
  },
  'covering.released': { 1: ReleaseFacts },
  'release.withdrawn': { 1: z.strictObject({ release: Id, covering: Id, reason: line(1000) }) },
  'release-rule.stated': { 1: z.strictObject({ fourEyes: z.boolean(), reason: line(1000) }) },
  'protection.laid': { 1: ProtectionFacts.extend({ protection: Id }) },
  'protection.changed': { 1: ProtectionFacts.extend({ protection: Id }) },
  'protection.lifted': { 1: z.strictObject({ protection: Id, liftedAt: Instant, note: paragraph(2000) }) },
  'protection.lifting-withdrawn': { 1: z.strictObject({ protection: Id, reason: line(1000) }) },
  'protection.withdrawn': { 1: z.strictObject({ protection: Id, reason: line(1000) }) },
  'findings.accepted': {
    1: z.strictObject({
      findings: z
        .array(
          z.strictObject({
            key: FindingKey,
            kind: FindingKindShape,
            basis: Sha256,
            ...FindingSubjects,
          }),
        )
        .min(1)
        .max(500),
      reason: line(1000),
    }),
  },
  'finding.reopened': {
    1: z.strictObject({
      key: FindingKey,
      kind: FindingKindShape,
      ...FindingSubjects,
      reason: line(1000),
    }),
  },
  'term.entered': { 1: TermFacts.extend({ term: TermId }) },
  'term.removed': { 1: z.strictObject({ term: TermId, was: z.string().max(60), reason: line(1000) }) },
  'head.stamped': {
    1: z.strictObject({
      size: z.number().int().min(1),
      head: Sha256,
      token: z.base64().max(350_000),
      at: Instant,
      by: line(200),
    }),
  },
  'note.written': { 1: z.strictObject({ day: Day, text: paragraph(20_000) }) },
} as const;

export type StatementKind = keyof typeof STATEMENTS;
export const STATEMENT_KINDS = Object.keys(STATEMENTS) as StatementKind[];

type VersionsOf<K extends StatementKind> = (typeof STATEMENTS)[K];
type Newest<V> = V extends { 2: infer S extends z.ZodType }
  ? { version: 2; payload: z.output<S> }
  : V extends { 1: infer S extends z.ZodType }
    ? { version: 1; payload: z.output<S> }
    : never;

/** The newest version of each kind: what is written today, and what older ones are read as. */
export type Statement = {
  [K in StatementKind]: { kind: K } & Newest<VersionsOf<K>>;
}[StatementKind];

export type StatementOf<K extends StatementKind> = Extract<Statement, { kind: K }>;

/** One entry: a statement with its place, time and speaker. `by` is null where the machine speaks. */
export type Entry<S extends Statement = Statement> = S & {
  readonly house: string;
  readonly seq: number;
  readonly at: string;
  readonly by: z.infer<typeof PersonShape> | null;
};

export const EntryFrame = z.strictObject({
  house: Id,
  seq: z.number().int().min(0),
  at: Instant,
  by: PersonShape.nullable(),
  kind: z.enum(STATEMENT_KINDS as [StatementKind, ...StatementKind[]]),
  version: z.number().int().min(1),
  payload: z.unknown(),
});

/** Reads an entry of any version as the newest; throws where kind or version is unknown or the payload does not fit. */
export function parseEntry(value: unknown): Entry {
  const frame = EntryFrame.parse(value);
  const versions: Record<number, z.ZodType> = STATEMENTS[frame.kind];
  const shape = versions[frame.version];
  if (!shape) throw new Error(`Entry ${frame.seq}: ${frame.kind} version ${frame.version} is not known.`);
  return { ...frame, version: newestVersion(frame.kind), payload: shape.parse(frame.payload) } as Entry;
}

export function newestVersion(kind: StatementKind): number {
  return Math.max(...Object.keys(STATEMENTS[kind]).map(Number));
}
