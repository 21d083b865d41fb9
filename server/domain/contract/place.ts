import { z } from 'zod';
import { Instant, PersonShape } from './shapes.ts';

const lat = z.number().min(-90).max(90);
const lon = z.number().min(-180).max(180);

export const HEADING_FLAGS = [
  // The file does not say whether it means true or magnetic north.
  'north-not-stated',
  // The photo has no position: the site's was taken.
  'turned-at-site',
  // Neither the photo nor the house has a position, so a magnetic heading stays magnetic.
  'no-place-to-turn-at',
  // Taken in a year, or so near a magnetic pole, that no model says where the needle pointed.
  'no-magnetic-model',
] as const;
export type HeadingFlag = (typeof HEADING_FLAGS)[number];

export const HeadingShape = z.object({
  trueDegrees: z.number().min(0).lt(360).meta({
    description: 'Clockwise from true north; from another where a flag says that it could not be turned.',
  }),
  stated: z.number().meta({ description: 'As the file has it.' }),
  reference: z.enum(['true', 'magnetic', 'unstated']),
  declination: z.number().nullable().meta({ description: 'East positive; what was added.' }),
  declinationUncertainty: z.number().nullable().meta({
    description: 'Degrees, of the magnetic model alone; the compass of the camera errs by more.',
  }),
  flags: z.array(z.enum(HEADING_FLAGS)),
});
export type PlaceHeading = z.infer<typeof HeadingShape>;

export const FENCE_VERDICTS = ['on-site', 'off-site', 'cannot-tell'] as const;
export type FenceVerdict = (typeof FENCE_VERDICTS)[number];

/** What a person's device said of its own position when a photo was added. */
export const DevicePosition = z
  .strictObject({
    lat,
    lon,
    errorM: z.number().min(0).max(20_000_000).meta({
      description: 'Radius in metres; browsers state it for 95 % (W3C Geolocation, accuracy).',
    }),
    measuredAt: Instant,
  })
  .refine(({ lat, lon }) => lat !== 0 || lon !== 0, '0, 0 is what devices say that do not know.');
export type DevicePosition = z.infer<typeof DevicePosition>;

/** What follows from the file, the house's site and the time. Degrees, metres, WGS-84. */
export const ReadPlaceShape = z.object({
  position: z
    .object({
      lat,
      lon,
      errorM: z.number().min(0).meta({ description: 'Assumed where the file states none.' }),
      errorStated: z.boolean(),
      altitudeM: z.number().nullable(),
      datum: z.enum(['wgs-84', 'tokyo']).meta({ description: 'tokyo: the error holds the shift.' }),
    })
    .nullable(),
  heading: HeadingShape.nullable(),
  fieldOfView: z.object({ horizontal: z.number(), vertical: z.number() }).nullable(),
  site: z
    .object({
      distanceM: z.number().min(0),
      azimuth: z.number().meta({ description: "From the site's middle, clockwise from true north." }),
      verdict: z.enum(FENCE_VERDICTS),
    })
    .nullable()
    .meta({ description: 'null: the photo or the house has no position.' }),
});
export type ReadPlace = z.infer<typeof ReadPlaceShape>;

export const PlaceShape = ReadPlaceShape.extend({
  device: z
    .object({ lat, lon, errorM: z.number(), measuredAt: Instant, by: PersonShape.nullable() })
    .nullable()
    .meta({
      description: 'Where a device was when the photo was added: other evidence, which decides nothing.',
    }),
});
export type Place = z.infer<typeof PlaceShape>;
