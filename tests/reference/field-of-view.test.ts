import { describe, expect, it } from 'vitest';
import { fieldOfView } from '#domain/place/field-of-view';

// Sides of the picture's aspect on the diagonal of 36 × 24 mm, √(36² + 24²) = 43.2666 mm (equal diagonal angle,
// CIPA DCG-001): 4:3 → 34.6133 × 25.9600 mm. Angles computed from that by 2·atan(side / 2f).
describe('the field of view', () => {
  it.each([
    [13, 108.3247, 85.4188, 106.1754, 89.9117],
    [24, 73.7398, 53.1301, 71.5915, 56.8119],
    [26, 69.3903, 49.5503, 67.2987, 53.0595],
    [28, 65.4705, 46.3972, 63.44, 49.7421],
    [50, 39.5978, 26.9915, 38.1848, 29.1055],
    [77, 26.3151, 17.7159, 25.3348, 19.1369],
  ])('of %d mm is that of 3:2 and of 4:3', (mm, h32, v32, h43, v43) => {
    expect(fieldOfView(mm, 3000, 2000)).toEqual({
      horizontal: expect.closeTo(h32, 3),
      vertical: expect.closeTo(v32, 3),
    });
    expect(fieldOfView(mm, 4032, 3024)).toEqual({
      horizontal: expect.closeTo(h43, 3),
      vertical: expect.closeTo(v43, 3),
    });
  });

  it('of an upright picture is narrow and high', () => {
    expect(fieldOfView(26, 3024, 4032)).toEqual({
      horizontal: expect.closeTo(53.0595, 3),
      vertical: expect.closeTo(67.2987, 3),
    });
  });

  // ExifTool 12.57 takes 36 mm for the long side whatever the aspect: 69.3903656740024° at 26 mm for 4:3 as well.
  it('differs from the 36-mm rule, and only off 3:2', () => {
    const THEIRS = 69.3903656740024;
    expect(fieldOfView(26, 3600, 2400)?.horizontal).toBeCloseTo(THEIRS, 3);
    expect(THEIRS - (fieldOfView(26, 4000, 3000)?.horizontal ?? 0)).toBeCloseTo(2.092, 2);
  });

  // Exif 0xA405: 0 means unknown.
  it.each([null, 0, NaN])('is unknown with %s mm', (mm) => expect(fieldOfView(mm, 4000, 3000)).toBeNull());
});
