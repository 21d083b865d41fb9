/** Of the 36 × 24 mm frame, in mm. */
const DIAGONAL_MM = Math.hypot(36, 24);

export interface FieldOfView {
  readonly horizontal: number;
  readonly vertical: number;
}

/**
 * How much of the circle the upright picture shows, in degrees: 2·atan(side / 2f), the sides being those of
 * the picture's own aspect with the diagonal of the 36 × 24 mm frame (equal diagonal angle of view, CIPA
 * DCG-001). null where the equivalent focal length is unknown. Of a cropped picture it says too much.
 */
export function fieldOfView(
  focalLength35Mm: number | null,
  width: number,
  height: number,
): FieldOfView | null {
  if (focalLength35Mm === null || !(focalLength35Mm > 0)) return null;
  const scale = DIAGONAL_MM / Math.hypot(width, height);
  return {
    horizontal: openingOf(width * scale, focalLength35Mm),
    vertical: openingOf(height * scale, focalLength35Mm),
  };
}

function openingOf(side: number, focal: number): number {
  return (2 * Math.atan(side / (2 * focal)) * 180) / Math.PI;
}
