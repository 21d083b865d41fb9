import type { Exif } from 'sharp';
import type { CopyFacts } from '../services/ports.ts';

/** The Exif 2.32 tags of a copy, as libvips writes them: IFD0 the picture, IFD2 the camera, IFD3 the place. */
export function copyExif({ wallTime, offsetMinutes, ...facts }: CopyFacts): Exif {
  const [seconds, fraction] = wallTime?.split('.') ?? [];
  return {
    IFD0: written({ Make: ascii(facts.make), Model: ascii(facts.model) }),
    IFD2: written({
      DateTimeOriginal: seconds?.replaceAll('-', ':').replace('T', ' '),
      SubSecTimeOriginal: fraction,
      OffsetTimeOriginal: seconds && offsetMinutes !== null ? offsetText(offsetMinutes) : undefined,
      LensModel: ascii(facts.lens),
      FocalLength: rational(facts.focalLengthMm),
      FocalLengthIn35mmFilm: facts.focalLength35Mm ? String(Math.round(facts.focalLength35Mm)) : undefined,
      BodySerialNumber: ascii(facts.serial),
    }),
    IFD3: gpsTags(facts),
  };
}

function gpsTags({ position, heading }: Pick<CopyFacts, 'position' | 'heading'>): Record<string, string> {
  return written({
    GPSLatitudeRef: position ? (position.lat < 0 ? 'S' : 'N') : undefined,
    GPSLatitude: position ? degreesText(position.lat) : undefined,
    GPSLongitudeRef: position ? (position.lon < 0 ? 'W' : 'E') : undefined,
    GPSLongitude: position ? degreesText(position.lon) : undefined,
    GPSHPositioningError: rational(position?.errorM),
    // Without a stated reference the value could not be understood the same way again.
    GPSImgDirectionRef:
      heading && heading.reference !== 'unstated' ? heading.reference[0]?.toUpperCase() : undefined,
    GPSImgDirection: rational(heading?.degrees),
  });
}

function written(tags: Record<string, string | undefined>): Record<string, string> {
  return Object.fromEntries(Object.entries(tags).filter((tag): tag is [string, string] => Boolean(tag[1])));
}

/** Exif 0x9011: `+HH:MM`. */
function offsetText(minutes: number): string {
  const part = (n: number) => String(n).padStart(2, '0');
  const abs = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${part(Math.floor(abs / 60))}:${part(abs % 60)}`;
}

/** Decimal degrees as one rational and two zeros: Exif allows fractions of a degree. Exact to 1e-7°, about 1 cm. */
function degreesText(degrees: number): string {
  return `${Math.round(Math.abs(degrees) * 1e7)}/10000000 0/1 0/1`;
}

/** Thousandths; undefined where a rational of 32 bits cannot hold the value. */
function rational(value: number | null | undefined): string | undefined {
  if (value === null || value === undefined || value * 1000 > 0xffffffff) return undefined;
  return `${Math.round(value * 1000)}/1000`;
}

/** Exif 2.32 ASCII values hold seven bits; other letters are left out rather than garbled. */
function ascii(text: string | null): string | undefined {
  return text?.replace(/[^\x20-\x7e]/gu, '').trim();
}
