/**
 * Variance of the response to [0 1 0; 1 −4 1; 0 1 0] (Pech-Pacheco et al., ICPR 2000) over a grey picture. At the
 * edge the picture is mirrored without repeating its last row, as OpenCV's default does.
 */
export function laplacianVariance(grey: Uint8Array, width: number, height: number): number {
  let [sum, squares] = [0, 0];
  for (let y = 0; y < height; y += 1) {
    const row = y * width;
    const above = mirrored(y - 1, height) * width;
    const below = mirrored(y + 1, height) * width;
    for (let x = 0; x < width; x += 1) {
      const sides =
        (grey[row + mirrored(x - 1, width)] as number) + (grey[row + mirrored(x + 1, width)] as number);
      const ends = (grey[above + x] as number) + (grey[below + x] as number);
      const response = sides + ends - 4 * (grey[row + x] as number);
      sum += response;
      squares += response * response;
    }
  }
  const mean = sum / (width * height);
  return squares / (width * height) - mean * mean;
}

function mirrored(at: number, length: number): number {
  const inside = at < 0 ? -at : at >= length ? 2 * length - 2 - at : at;
  return Math.min(length - 1, Math.max(0, inside));
}
