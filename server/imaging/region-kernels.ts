/** Filters on grey values, as lists of offset and weight. */
export interface Kernel {
  readonly radius: number;
  /** Row by row, (2 radius + 1)² of them. */
  readonly weights: Float64Array;
}

/** The Laplacian of Pech-Pacheco et al., Diatom autofocusing in brightfield microscopy, ICPR 2000. */
export const LAPLACIAN: Kernel = { radius: 1, weights: Float64Array.of(0, 1, 0, 1, -4, 1, 0, 1, 0) };
export const ACROSS: Kernel = { radius: 1, weights: Float64Array.of(0, 0, 0, -0.5, 0, 0.5, 0, 0, 0) };
export const DOWN: Kernel = { radius: 1, weights: Float64Array.of(0, -0.5, 0, 0, 0, 0, 0, 0.5, 0) };

/** A normalised Gaussian of standard deviation `sigma` px. */
export function gaussian(sigma: number): Kernel {
  const radius = Math.ceil(3 * sigma);
  const side = 2 * radius + 1;
  const line = Array.from({ length: side }, (_, i) => Math.exp(-((i - radius) ** 2) / (2 * sigma * sigma)));
  const sum = line.reduce((a, b) => a + b, 0);
  const weights = new Float64Array(side * side);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) weights[y * side + x] = ((line[x] ?? 0) * (line[y] ?? 0)) / (sum * sum);
  return { radius, weights };
}

/** One filter that does what the two do one after the other. */
export function convolve(a: Kernel, b: Kernel): Kernel {
  const radius = a.radius + b.radius;
  const [side, sideA, sideB] = [2 * radius + 1, 2 * a.radius + 1, 2 * b.radius + 1];
  const weights = new Float64Array(side * side);
  a.weights.forEach((weight, i) => {
    const [ax, ay] = [i % sideA, Math.floor(i / sideA)];
    b.weights.forEach((other, j) => {
      const at = (ay + Math.floor(j / sideB)) * side + ax + (j % sideB);
      weights[at] = (weights[at] ?? 0) + weight * other;
    });
  });
  return { radius, weights };
}

/** What white noise of variance 1 becomes. */
export function noiseGain({ weights }: Kernel): number {
  return weights.reduce((sum, weight) => sum + weight * weight, 0);
}
