import type { PixelPoint } from '#domain/photo/region-width';
import type { GreyPicture } from './grey-picture.ts';
import { visitInside } from './inside-outline.ts';
import { ACROSS, DOWN, LAPLACIAN, convolve, gaussian, noiseGain } from './region-kernels.ts';

/** Before deriving anything, in px: without it the noise of single pixels would pass for detail. */
const SMOOTHING = gaussian(1);
const SECOND = convolve(SMOOTHING, LAPLACIAN);
const FIRST = [convolve(SMOOTHING, ACROSS), convolve(SMOOTHING, DOWN)] as const;
const SIDE = 2 * SECOND.radius + 1;
const GAIN = { second: noiseGain(SECOND), first: noiseGain(FIRST[0]) + noiseGain(FIRST[1]) };
/** What rounding to whole grey values adds. */
const ROUNDING = 1 / 12;

/**
 * Width in px of what stands out inside the outline, Infinity where nothing rises above the noise: the variance of
 * the Laplacian (Pech-Pacheco et al. 2000) held against the mean square of the gradient. For an edge blurred by
 * a Gaussian of deviation s the second is 2 s² times the first, whatever its contrast: ∫f'² = 1 / (2 √π s) and
 * ∫f''² = 1 / (4 √π s³). `noise` is the deviation of the noise in grey values.
 */
export function detailWidth(
  picture: GreyPicture,
  points: readonly PixelPoint[],
  stride: number,
  noise: number,
): number {
  const [gx, gy] = FIRST.map((kernel) => kernel.weights) as [Float64Array, Float64Array];
  const sums = { count: 0, second: 0, second2: 0, first2: 0 };
  const around = new Float64Array(SIDE * SIDE);
  visitInside(points, picture, stride, (x, y) => {
    gather(picture, x, y, around);
    let [second, right, down] = [0, 0, 0];
    for (let i = 0; i < around.length; i += 1) {
      const grey = around[i] as number;
      second += grey * (SECOND.weights[i] as number);
      right += grey * (gx[i] as number);
      down += grey * (gy[i] as number);
    }
    sums.count += 1;
    sums.second += second;
    sums.second2 += second * second;
    sums.first2 += right * right + down * down;
  });
  const variance = noise * noise + ROUNDING;
  const mean = sums.second / sums.count;
  const second = sums.second2 / sums.count - mean * mean - variance * GAIN.second;
  const first = sums.first2 / sums.count - variance * GAIN.first;
  return second > 0 && first > 0 ? Math.sqrt(first / (2 * second)) : Infinity;
}

/** The pixels around one, those of the edge repeated beyond it. */
function gather({ width, height, data }: GreyPicture, x: number, y: number, into: Float64Array): void {
  const { radius } = SECOND;
  let at = 0;
  for (let j = y - radius; j <= y + radius; j += 1) {
    const row = Math.min(height - 1, Math.max(0, j)) * width;
    for (let i = x - radius; i <= x + radius; i += 1)
      into[at++] = data[row + Math.min(width - 1, Math.max(0, i))] as number;
  }
}
