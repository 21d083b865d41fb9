import { z } from 'zod';
import { parseMark, type Mark } from '../frame/mark.ts';
import { STAGES, TRACK_NAMES } from '../frame/stage.ts';
import { POLYGON_MAX_POINTS, regionProblem } from '../photo/region.ts';
import { SetOutShape, ShownStretch, ZoneShape } from './frame-shapes.ts';

/** The shapes that requests, responses and ledger entries are made of. */

export const Id = z
  .uuid()
  .meta({ description: 'A UUID made by the client; sending it again repeats nothing.' });
export const Instant = z.iso.datetime({ precision: 3 }).meta({ description: 'UTC, milliseconds.' });
export const Day = z.iso.date().meta({ description: "A calendar day in the house's zone." });
export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/);
export const StageShape = z.enum(STAGES);
export const TrackShape = z.enum(TRACK_NAMES);

/** One line of free text: no control characters, trimmed. */
export const line = (max: number) =>
  z
    .string()
    .trim()
    .min(1)
    .max(max)
    .regex(/^[^\p{Cc}\p{Cs}]*$/u);
export const paragraph = (max: number) =>
  z
    .string()
    .max(max)
    .regex(/^[^\p{Cs}\0]*$/u);

/** A mark in its normal form (see frame/mark). */
export const MarkShape = z
  .string()
  .max(400)
  .transform((text, ctx): Mark => {
    const parsed = parseMark(text);
    if (parsed.ok) return parsed.mark;
    ctx.addIssue({ code: 'custom', message: `This is not a mark: ${parsed.problem}.` });
    return z.NEVER;
  })
  .meta({ description: 'The name of a member, unique in its house. NFKC, single spaces.' });

const unit = z
  .number()
  .min(-1e-9)
  .max(1 + 1e-9);

export const RegionShape = z
  .discriminatedUnion('shape', [
    z.strictObject({ shape: z.literal('rectangle'), x: unit, y: unit, w: unit, h: unit }),
    z.strictObject({
      shape: z.literal('polygon'),
      points: z
        .array(z.tuple([unit, unit]))
        .min(3)
        .max(POLYGON_MAX_POINTS),
    }),
  ])
  .superRefine((region, ctx) => {
    const problem = regionProblem(region);
    if (problem) ctx.addIssue({ code: 'custom', message: `This region cannot be used: ${problem}.` });
  })
  .meta({ description: 'Unit coordinates of the upright image, origin top left; never outside it.' });

export const PersonShape = z.object({ id: z.string().min(1).max(200), name: z.string().max(200) });
export type Person = z.infer<typeof PersonShape>;

export const ROLES = ['owner', 'carpenter', 'inspector', 'builder'] as const;
export const RoleShape = z.enum(ROLES);
export type Role = (typeof ROLES)[number];

export const COVERING_KINDS = ['plaster', 'floor', 'ceiling', 'roof-boards', 'other'] as const;
export const CoveringKindShape = z.enum(COVERING_KINDS);
export type CoveringKind = (typeof COVERING_KINDS)[number];

/** What the schedule says of one member. `other` keeps columns that the program has no use for yet. */
export const MemberFacts = z.strictObject({
  mark: MarkShape,
  kind: z.string().trim().max(100).default(''),
  name: z.string().trim().max(200).default(''),
  place: z.string().trim().max(200).default(''),
  track: TrackShape.nullable().default(null).meta({ description: 'null: taken from the kind.' }),
  note: paragraph(2000).default(''),
  other: z.record(z.string().min(1).max(100), z.string().max(1000)).default({}),
  setOut: SetOutShape.nullable().default(null).meta({
    description: 'Where it lies, as the schedule states it; null: it does not.',
  }),
});
export type MemberFacts = z.infer<typeof MemberFacts>;

export const LatLonShape = z.strictObject({
  lat: z.number().min(-90).max(90),
  lon: z.number().min(-180).max(180),
});

/**
 * Metres. A plot with its yard and the road before it, and what a phone errs by between houses: common
 * practice. With 25 m next to nothing could be told; a kilometre would take in the next site.
 */
export const SITE_RADIUS = { default: 100, min: 10, max: 10_000 } as const;
const radiusM = z.number().min(SITE_RADIUS.min).max(SITE_RADIUS.max);

/** The middle of the site and how far it reaches. */
export const SiteShape = LatLonShape.extend({ radiusM: radiusM.default(SITE_RADIUS.default) });
export type Site = z.infer<typeof SiteShape>;

export const HouseFacts = z.strictObject({
  name: line(200),
  zone: z.string().min(1).max(64).meta({ description: 'IANA time zone of the site, e.g. Asia/Tokyo.' }),
  firstDay: Day.nullable().default(null),
  site: SiteShape.nullable().default(null),
});
export type HouseFacts = z.infer<typeof HouseFacts>;

/** A partial change: written out, since a partial of shapes with defaults would fill them in. */
export const HouseChanges = z.strictObject({
  name: line(200).optional(),
  zone: HouseFacts.shape.zone.optional(),
  firstDay: Day.nullable().optional(),
  site: LatLonShape.extend({ radiusM: radiusM.optional() }).nullable().optional(),
});
export type HouseChanges = z.infer<typeof HouseChanges>;

export const Hidden = z.strictObject({ mark: MarkShape, least: StageShape });

export const CoveringFacts = z.strictObject({
  name: line(200),
  kind: CoveringKindShape,
  plannedDay: Day.nullable().default(null),
  zone: ZoneShape.nullable().default(null).meta({
    description: 'What lies in it is hidden, as the table of requirements says; null: only what is listed.',
  }),
  hides: z.array(Hidden).max(20_000).meta({ description: 'Members listed by hand, whole.' }),
  except: z.array(MarkShape).max(20_000).default([]).meta({
    description: 'Members that lie in the zone and stay visible.',
  }),
  note: paragraph(2000).default(''),
});
export type CoveringFacts = z.infer<typeof CoveringFacts>;

/** A value that two readers of the same file read differently. */
export const RivalShape = z.strictObject({
  field: z.enum([
    'wallTime',
    'offsetMinutes',
    'gpsTime',
    'position',
    'positionError',
    'heading',
    'make',
    'model',
    'serial',
    'focalLength35Mm',
  ]),
  first: z.string().max(100),
  second: z.string().max(100),
});
export type Rival = z.infer<typeof RivalShape>;

/** What was read from an image file, raw: wall times carry no zone, angles no reference that was not written. */
export const ReadingsShape = z.strictObject({
  wallTime: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?$/)
    .nullable()
    .meta({ description: 'DateTimeOriginal with SubSecTimeOriginal, a local time without zone.' }),
  offsetMinutes: z
    .number()
    .int()
    .min(-1440)
    .max(1440)
    .nullable()
    .meta({ description: 'OffsetTimeOriginal (0x9011).' }),
  gpsTime: Instant.nullable().meta({ description: 'GPSDateStamp and GPSTimeStamp, UTC.' }),
  position: z
    .strictObject({
      lat: z.number().min(-90).max(90),
      lon: z.number().min(-180).max(180),
      errorM: z.number().min(0).nullable(),
      altitudeM: z.number().nullable(),
    })
    .nullable(),
  heading: z
    .strictObject({
      degrees: z.number().min(0).max(360),
      reference: z.enum(['true', 'magnetic', 'unstated']),
    })
    .nullable(),
  orientation: z.number().int().min(1).max(8).nullable().meta({ description: 'Exif 0x0112 as stored.' }),
  make: z.string().max(200).nullable(),
  model: z.string().max(200).nullable(),
  serial: z.string().max(200).nullable(),
  lens: z.string().max(200).nullable(),
  focalLengthMm: z.number().positive().nullable(),
  focalLength35Mm: z.number().positive().nullable(),
  complaints: z
    .array(z.string().max(200))
    .meta({ description: 'What could not be read and why, in closed codes.' }),
  rivals: z.array(RivalShape).meta({ description: 'What a second reader of the file reads differently.' }),
});
export type Readings = z.infer<typeof ReadingsShape>;

export const MEDIA_TYPES = [
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/tiff',
  'image/heic',
  'image/avif',
] as const;
export type MediaType = (typeof MEDIA_TYPES)[number];

export const PhotoFacts = z.strictObject({
  sha256: Sha256,
  bytes: z.number().int().positive(),
  mediaType: z.enum(MEDIA_TYPES),
  fileName: z.string().max(255),
  width: z.number().int().positive().meta({ description: 'Pixels of the upright image.' }),
  height: z.number().int().positive(),
  readings: ReadingsShape,
});
export type PhotoFacts = z.infer<typeof PhotoFacts>;

/** As before files were read by two readers. */
export const PhotoFactsOfOneReader = PhotoFacts.extend({ readings: ReadingsShape.omit({ rivals: true }) });

export const TagFacts = z.strictObject({
  mark: MarkShape,
  stage: StageShape,
  region: RegionShape,
  stretch: ShownStretch.nullable().default(null).meta({
    description:
      'The part of the member that the region shows, between two marks; null: all that is visible.',
  }),
  note: paragraph(1000).default(''),
});
export type TagFacts = z.infer<typeof TagFacts>;
