import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { harm, type Harm } from './degrade.ts';

/**
 * The ground outside the measure: bars of a known share of the member, put through the same harm, and read by how
 * much of their contrast is left. Limiting resolution at a tenth of the contrast and sharpness at half of it
 * follow the use of ISO 12233 (*from memory*); that the head of a peg is an eighth of the timber and an ink line or
 * a gap at a wedge a sixteenth is *common practice*.
 */
export const BARS = { large: 8, small: 16 } as const;
const [LIGHT, DARK] = [160, 80];
/** Light of the room on the screen, as a share of its white (*from memory*: 100:1 is a good screen by day). */
const FLARE = 0.01;
const FINE = 8;

/** `perAcross` bars stand side by side across `across` px; drawn eight times as fine and averaged. */
function drawBars(across: number, perAcross: number): GreyPicture {
  const bar = across / perAcross;
  const width = Math.round(across * 2);
  const height = Math.max(8, Math.round(across / 2));
  const row = Uint8Array.from({ length: width }, (_, x) => {
    let sum = 0;
    for (let i = 0; i < FINE; i += 1)
      sum += Math.floor((x + (i + 0.5) / FINE) / bar) % 2 === 0 ? LIGHT : DARK;
    return Math.round(sum / FINE);
  });
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) data.set(row, y * width);
  return { width, height, data };
}

/** What a reader sees of the contrast of the bars, as a share of that of bars that nothing has harmed. */
export async function contrastLeft(across: number, perAcross: number, done: Harm): Promise<number> {
  const harmed = await harm(drawBars(across, perAcross), done);
  const period = (2 * across) / perAcross;
  return seenContrast(harmed, period) / shown(LIGHT, DARK);
}

/** Of the fundamental of the bars, whatever its phase, over whole periods in the middle of the picture. */
function seenContrast({ width, height, data }: GreyPicture, period: number): number {
  const periods = Math.floor((width / period) * 0.6);
  const from = Math.round((width - periods * period) / 2);
  let [sum, real, imaginary, count] = [0, 0, 0, 0];
  for (let x = from; x < from + Math.round(periods * period); x += 1)
    for (let y = 0; y < height; y += 1) {
      const grey = data[y * width + x] as number;
      sum += grey;
      real += grey * Math.cos((2 * Math.PI * x) / period);
      imaginary += grey * Math.sin((2 * Math.PI * x) / period);
      count += 1;
    }
  // The fundamental of a square wave is 4/π times as high.
  const half = ((2 * Math.hypot(real, imaginary)) / count) * (Math.PI / 4);
  const middle = sum / count;
  return shown(Math.min(255, middle + half), Math.max(0, middle - half));
}

/** Michelson contrast of two grey values on a screen in a lit room; sRGB as in IEC 61966-2-1. */
function shown(light: number, dark: number): number {
  const luminance = (code: number) => {
    const c = code / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  const [a, b] = [luminance(light), luminance(dark)];
  return (a - b) / (a + b + 2 * FLARE);
}

/** What the bars say of a region that was harmed like this. */
export async function groundVerdict(across: number, done: Harm): Promise<'clear' | 'weak' | 'unreadable'> {
  if ((await contrastLeft(across, BARS.large, done)) < 0.1) return 'unreadable';
  return (await contrastLeft(across, BARS.small, done)) >= 0.5 ? 'clear' : 'weak';
}
