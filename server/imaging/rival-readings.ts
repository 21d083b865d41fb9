import type { Readings, Rival } from '#domain/contract/shapes';

type Field = Rival['field'];

/** Less than these is two ways to round the same. Degrees, metres, seconds. */
const SAME = { degrees: 1e-5, metres: 0.5, seconds: 1, millimetres: 0.5 };

const RULES: { readonly [F in Field]: (a: Readings, b: Readings) => [string, string] | null } = {
  wallTime: (a, b) => texts(a.wallTime, b.wallTime, (x, y) => x.slice(0, 19) === y.slice(0, 19)),
  offsetMinutes: (a, b) => numbers(a.offsetMinutes, b.offsetMinutes, 0),
  gpsTime: (a, b) =>
    texts(a.gpsTime, b.gpsTime, (x, y) => Math.abs(Date.parse(x) - Date.parse(y)) <= SAME.seconds * 1000),
  position: ({ position: a }, { position: b }) => {
    if (!a || !b) return null;
    const near = Math.max(Math.abs(a.lat - b.lat), Math.abs(a.lon - b.lon)) <= SAME.degrees;
    return near ? null : [`${a.lat}, ${a.lon}`, `${b.lat}, ${b.lon}`];
  },
  positionError: (a, b) => numbers(a.position?.errorM ?? null, b.position?.errorM ?? null, SAME.metres),
  heading: (a, b) => numbers(a.heading?.degrees ?? null, b.heading?.degrees ?? null, SAME.metres),
  make: (a, b) => texts(a.make, b.make, sameName),
  model: (a, b) => texts(a.model, b.model, sameName),
  serial: (a, b) => texts(a.serial, b.serial, sameName),
  focalLength35Mm: (a, b) => numbers(a.focalLength35Mm, b.focalLength35Mm, SAME.millimetres),
};

/** What two readers of one file read differently, beyond ways of writing. Where one reads nothing, none is a rival. */
export function rivalReadings(first: Readings, second: Readings): Rival[] {
  return (Object.keys(RULES) as Field[]).flatMap((field) => {
    const differ = RULES[field](first, second);
    return differ ? [{ field, first: differ[0].slice(0, 100), second: differ[1].slice(0, 100) }] : [];
  });
}

function texts(
  a: string | null,
  b: string | null,
  same: (a: string, b: string) => boolean,
): [string, string] | null {
  return a === null || b === null || same(a, b) ? null : [a, b];
}

function numbers(a: number | null, b: number | null, tolerance: number): [string, string] | null {
  return a === null || b === null || Math.abs(a - b) <= tolerance ? null : [String(a), String(b)];
}

/** Names beyond ASCII are in no encoding that Exif 2.3 names, so each reader guesses; they are no contradiction. */
function sameName(a: string, b: string): boolean {
  return a.trim() === b.trim() || /[^\x20-\x7e]/.test(a + b);
}
