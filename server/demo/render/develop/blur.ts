import type { Size } from '../camera.ts';

/** Three numbers a pixel, linear. */
export interface Light extends Size {
  readonly values: Float32Array;
}

const clampTo = (value: number, length: number) => Math.min(length - 1, Math.max(0, value));

/** A weighted sum of shifted pictures; beyond the edge the picture goes on as it ends. */
function shifted(
  { width, height, values }: Light,
  shifts: readonly (readonly [x: number, y: number, weight: number])[],
): Light {
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const p = 3 * (y * width + x);
      for (const [dx, dy, weight] of shifts) {
        const q = 3 * (clampTo(y + dy, height) * width + clampTo(x + dx, width));
        for (let k = 0; k < 3; k += 1) out[p + k]! += weight * values[q + k]!;
      }
    }
  return { width, height, values: out };
}

/** As a lens is never quite sharp; sigma in pixels. */
export function softened(light: Light, sigma: number): Light {
  if (sigma <= 0) return light;
  const reach = Math.ceil(sigma * 3);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const whole = bell.reduce((a, b) => a + b, 0);
  const across = bell.map((weight, i) => [i - reach, 0, weight / whole] as const);
  const down = across.map(([x, , weight]) => [0, x, weight] as const);
  return shifted(shifted(light, across), down);
}

/** As if the camera had moved so many pixels while it was open. */
export function moved(light: Light, [x, y]: readonly [number, number]): Light {
  const steps = Math.ceil(Math.max(Math.abs(x), Math.abs(y)));
  if (steps < 1) return light;
  const shifts = Array.from({ length: steps + 1 }, (_, i) => {
    const share = i / steps - 0.5;
    return [Math.round(x * share), Math.round(y * share), 1 / (steps + 1)] as const;
  });
  return shifted(light, shifts);
}
