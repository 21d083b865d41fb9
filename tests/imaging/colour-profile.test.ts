import sharp from 'sharp';
import { expect, it } from 'vitest';
import { withProfile } from '../../server/imaging/open-pixels.ts';

/** One colour, in sRGB. */
const COLOUR = { r: 208, g: 64, b: 32 };

it('reads raw pixels by their profile: Display P3 comes back as the sRGB that it was made of', async () => {
  const srgb = sharp({ create: { width: 8, height: 8, channels: 4, background: COLOUR } });
  const png = await srgb.withIccProfile('p3').png().toBuffer();
  const { icc } = await sharp(png).metadata();
  const { data, info } = await sharp(png, { ignoreIcc: true }).raw().toBuffer({ resolveWithObject: true });
  const raw = () => sharp(data, { raw: { width: 8, height: 8, channels: info.channels } });

  const [red = 0, green = 0, blue = 0] = await (await withProfile(raw(), icc ?? null)).raw().toBuffer();
  expect([red, green, blue].every((value, i) => Math.abs(value - (Object.values(COLOUR)[i] ?? 0)) <= 2)).toBe(
    true,
  );
  // Without the profile the numbers of P3 would pass for sRGB.
  const [plain = 0] = await (await withProfile(raw(), null)).raw().toBuffer();
  expect(Math.abs(plain - COLOUR.r)).toBeGreaterThan(8);
});
