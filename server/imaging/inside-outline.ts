import type { PixelPoint } from '#domain/photo/region-width';

/**
 * Calls `visit` for pixels whose centre lies inside the outline (even-odd rule), every `stride`th of them across
 * and down; for an outline between pixel centres once, for the nearest.
 */
export function visitInside(
  points: readonly PixelPoint[],
  size: { width: number; height: number },
  stride: number,
  visit: (x: number, y: number) => void,
): void {
  let found = false;
  const ys = points.map(([, y]) => y);
  const first = Math.max(0, Math.ceil(Math.min(...ys) - 0.5));
  const last = Math.min(size.height - 1, Math.floor(Math.max(...ys) - 0.5));
  for (let y = first; y <= last; y += stride)
    for (const [from, to] of spans(points, y + 0.5)) {
      const end = Math.min(size.width - 1, Math.ceil(to - 0.5) - 1);
      for (let x = Math.max(0, Math.ceil(from - 0.5)); x <= end; x += stride) {
        found = true;
        visit(x, y);
      }
    }
  if (!found) visit(...middlePixel(points, size));
}

/** Where a horizontal line lies inside. */
function spans(points: readonly PixelPoint[], y: number): [from: number, to: number][] {
  const crossings: number[] = [];
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
    if (ay <= y !== by <= y) crossings.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
  });
  crossings.sort((a, b) => a - b);
  const inside: [number, number][] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) inside.push([crossings[i] ?? 0, crossings[i + 1] ?? 0]);
  return inside;
}

function middlePixel(
  points: readonly PixelPoint[],
  { width, height }: { width: number; height: number },
): [x: number, y: number] {
  const middle = (values: number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  const within = (value: number, size: number) => Math.min(size - 1, Math.max(0, Math.floor(value)));
  return [within(middle(points.map(([x]) => x)), width), within(middle(points.map(([, y]) => y)), height)];
}
