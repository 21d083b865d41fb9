/** What pieces of a house belong together in the trade, in the order in which a frame goes up. */
export const FAMILIES = [
  'post',
  'sill',
  'rail',
  'brace',
  'beam',
  'plate',
  'roof',
  'truss',
  'floor',
  'ceiling',
  'opening',
  'lath',
  'joinery',
  'fastener',
  'service',
  'insulation',
  'membrane',
] as const;
export type Family = (typeof FAMILIES)[number];

/** How the axis of a piece runs; 'none' for what has no axis: sheets, fillings, lath, pegs. */
export const LIES = ['upright', 'level', 'sloping', 'none'] as const;
export type Lies = (typeof LIES)[number];
