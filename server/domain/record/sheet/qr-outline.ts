/** The modules of a QR symbol, row by row; 1 is dark. */
export interface QrModules {
  readonly size: number;
  readonly data: ArrayLike<number>;
}

/** Modules of light margin on each side (ISO/IEC 18004, quiet zone). */
export const QUIET_ZONE = 4;

/** The dark modules as an SVG path of strips, one unit a module, the quiet zone included. */
export function qrOutline({ size, data }: QrModules): string {
  const strips: string[] = [];
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) {
      const from = x;
      while (x < size && data[y * size + x]) x++;
      if (x > from) strips.push(`M${from + QUIET_ZONE} ${y + QUIET_ZONE}h${x - from}v1h${from - x}z`);
    }
  return strips.join('');
}

/** Modules a side, the quiet zone included. */
export function qrSide({ size }: QrModules): number {
  return size + 2 * QUIET_ZONE;
}
