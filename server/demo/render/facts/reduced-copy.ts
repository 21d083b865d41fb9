import sharp from 'sharp';

const LONG_SIDE_PX = 1024;
const QUALITY = 62;

/** As telephones send pictures on: small, strongly compressed, with nothing written in it. */
export function reducedCopy(jpeg: Uint8Array): Promise<Buffer> {
  return sharp(jpeg).resize(LONG_SIDE_PX).jpeg({ quality: QUALITY }).toBuffer();
}
