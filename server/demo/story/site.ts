import type { Site } from '#domain/contract/shapes';

/** The raising as the pictures were rendered: their files carry days around it. */
export const RENDERED_RAISING = '2026-04-01';

/** Where the boathouse stands, as the positions in the pictures have it; open water, so that it is nobody's plot. */
export const SITE: Site = { lat: 35.3347, lon: 136.0917, radiusM: 60 };
