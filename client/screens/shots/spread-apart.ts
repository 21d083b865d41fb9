export interface Dot {
  readonly x: number;
  readonly y: number;
}

const ROUNDS = 60;

/** Moves dots that lie nearer than `least` to each other apart, each pair by halves; what has room stays. */
export function spreadApart(dots: readonly Dot[], least: number): Dot[] {
  const moved = dots.map(({ x, y }) => ({ x, y }));
  for (let round = 0; round < ROUNDS; round++) {
    let isCrowded = false;
    for (const [i, a] of moved.entries())
      for (const b of moved.slice(i + 1)) {
        const [dx, dy] = [b.x - a.x, b.y - a.y];
        const far = Math.hypot(dx, dy);
        if (far >= least) continue;
        isCrowded = true;
        const push = (least - far) / 2 + 0.01;
        const [ux, uy] = far < 1e-6 ? [1, 0] : [dx / far, dy / far];
        [a.x, a.y, b.x, b.y] = [a.x - ux * push, a.y - uy * push, b.x + ux * push, b.y + uy * push];
      }
    if (!isCrowded) break;
  }
  return moved;
}
