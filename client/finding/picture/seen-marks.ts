import type { Region } from '#domain/photo/region';
import { planeOf } from '#domain/frame/drawing/planes';
import type { Axis } from '#domain/frame/set-out';
import type { MemberIndex } from '../member-index.ts';
import type { Space } from '../use-space.ts';
import { drawnAxis } from './drawn-axis.ts';
import { unlikenessIn } from './in-picture.ts';

export interface TagInPicture {
  readonly mark: string;
  readonly region: Region;
}

/** Marks that a region of the picture likely shows, the likeliest first. */
export type SeenMarks = (region: Region) => readonly string[];

/** More than so many make the stance of the camera no surer, only slower to find. */
const MOST_KNOWN = 16;
/** How much a member gains by lying in an elevation of which something is tagged, where places alone do not decide. */
const SAME_ELEVATION = 3;
/** How much unlikelier than the likeliest one may be. */
const OUT_OF_QUESTION = 20;

/**
 * What else of the frame a picture shows where, by the members that are tagged on it. Only as far as the grid and the
 * schedule say where members lie; `tallness`: height by width of the picture.
 */
export function seenMarks(
  tags: readonly TagInPicture[],
  { axis, reader }: Pick<Space, 'axis' | 'reader'>,
  index: MemberIndex,
  tallness: number,
): SeenMarks {
  const placed = tags.flatMap(({ mark, region }) => {
    const line = axis(mark);
    return line ? [{ line, drawn: drawnAxis(region, tallness) }] : [];
  });
  const { first, second } = reader.grid;
  const hand = (first.runs === 'rightward') === (second.runs === 'upward') ? 1 : -1;
  const unlikeness = unlikenessIn({ known: placed.slice(-MOST_KNOWN), tallness, hand });
  if (!unlikeness) return () => [];
  const elevationsOf = (line: Axis) =>
    (['first', 'second'] as const).flatMap((family) => planeOf(line, family, reader)?.label ?? []);
  const tagged = new Set(placed.flatMap(({ line }) => elevationsOf(line)));
  const here = new Set(tags.map(({ mark }) => mark));
  const others = index.entries.flatMap(({ member: { mark, retired } }) => {
    const line = retired || here.has(mark) ? null : axis(mark);
    if (!line) return [];
    return [{ mark, line, gain: elevationsOf(line).some((label) => tagged.has(label)) ? SAME_ELEVATION : 0 }];
  });
  return (region) => {
    const drawn = drawnAxis(region, tallness);
    const rated = others
      .map(({ mark, line, gain }) => ({ mark, off: unlikeness(drawn, line) - gain }))
      .sort((a, b) => a.off - b.off);
    const limit = (rated[0]?.off ?? 0) + OUT_OF_QUESTION;
    return rated.filter(({ off }) => off <= limit).map(({ mark }) => mark);
  };
}
