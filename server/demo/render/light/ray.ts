const NEARLY_ZERO = 1e-12;

/** A ray and what it meets first; one object is used again and again, since millions are sent. */
export class Ray {
  ox = 0;
  oy = 0;
  oz = 0;
  dx = 0;
  dy = 0;
  dz = 1;
  /** One over the direction. */
  ix = 0;
  iy = 0;
  iz = 0;
  /** How far it may go, and when it has met something, how far it went. */
  far = 0;
  /** The triangle it met, as the tree counts them, or -1. */
  met = -1;
  /** Where on it: shares of its second and third corner. */
  u = 0;
  v = 0;

  from(x: number, y: number, z: number): this {
    this.ox = x;
    this.oy = y;
    this.oz = z;
    return this;
  }

  /** Of length one. */
  towards(x: number, y: number, z: number): this {
    // Along a side of a box 0 · ∞ would be no number.
    this.dx = Math.abs(x) < NEARLY_ZERO ? NEARLY_ZERO : x;
    this.dy = Math.abs(y) < NEARLY_ZERO ? NEARLY_ZERO : y;
    this.dz = Math.abs(z) < NEARLY_ZERO ? NEARLY_ZERO : z;
    this.ix = 1 / this.dx;
    this.iy = 1 / this.dy;
    this.iz = 1 / this.dz;
    return this;
  }
}
