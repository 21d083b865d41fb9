/**
 * Ways in which a covering lies over the frame. Plaster between posts (真壁) fills the wall and leaves the
 * posts in sight; plaster over the posts (大壁) hides those too.
 */
export const COVERING_FORMS = [
  'plaster-between-posts',
  'plaster-over-posts',
  'floor',
  'ceiling',
  'roof-boards',
] as const;
export type CoveringForm = (typeof COVERING_FORMS)[number];
