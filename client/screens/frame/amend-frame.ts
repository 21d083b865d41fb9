import type { FrameOfPhotoView, FrameView } from '#domain/contract/frame-views';

/**
 * The frame with what a tag on a photo changed: since when stages are seen, and what is on record of what is
 * hidden. null where another frame is meant: a member or covering is new, or the day has changed.
 */
export function amendFrame(
  frame: FrameView,
  { today, members, coverings }: FrameOfPhotoView,
): FrameView | null {
  if (today !== frame.today) return null;
  const seen = new Map(members.map(({ mark, seen }) => [mark, seen]));
  const hides = new Map(coverings.map(({ id, hides }) => [id, new Map(hides.map((one) => [one.mark, one]))]));
  const amended: FrameView = {
    ...frame,
    members: frame.members.map((member) => {
      const now = seen.get(member.mark);
      return now ? { ...member, seen: now } : member;
    }),
    coverings: frame.coverings.map((covering) => {
      const now = hides.get(covering.id);
      return now ? { ...covering, hides: covering.hides.map((one) => now.get(one.mark) ?? one) } : covering;
    }),
  };
  const known = new Set(frame.members.map(({ mark }) => mark));
  const isKnown = members.every(({ mark }) => known.has(mark));
  return isKnown && fits(frame.coverings, coverings) ? amended : null;
}

type Hides = readonly { readonly id: string; readonly hides: readonly { readonly mark: string }[] }[];

function fits(whole: Hides, part: Hides): boolean {
  const marks = new Map(whole.map(({ id, hides }) => [id, new Set(hides.map(({ mark }) => mark))]));
  return part.every(({ id, hides }) => hides.every(({ mark }) => marks.get(id)?.has(mark)));
}
