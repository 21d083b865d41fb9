/** Of what no layer beside it hides. */
const SEEN = { hiddenAt: null, before: null, otherFace: null };
/** What a line of the report says of a member without a place in space. */
export const WHOLE_LINE = {
  ...{ views: 1, hidden: null, missing: [], lengthMm: null, completeAt: null },
  ...SEEN,
  lostBefore: [],
  liesUnder: null,
  waiver: null,
};
