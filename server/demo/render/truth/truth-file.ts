import type { Shown, Truth } from './truth.ts';

/** A member that can be seen, in a row: the share of its whole outline and of what lies in the picture per mille. */
type Row = readonly [
  mark: string,
  stage: string,
  pixels: number,
  ofWhole: number,
  ofPicture: number,
  bounds: readonly number[],
  outline: readonly number[],
];

interface TruthFile extends Omit<Truth, 'members'> {
  readonly day: number;
  readonly members: readonly Row[];
}

/** What is kept beside a picture. Of members nobody can see there is nothing to say. */
export type Kept = Omit<Truth, 'members'> & {
  /** After the raising. */
  readonly day: number;
  readonly members: readonly KeptMember[];
};

/** Outlines and bounds in whole pixels, shares to a thousandth; its kind stands in the schedule. */
export type KeptMember = Omit<Shown, 'kind' | 'bounds'> & { readonly bounds: readonly number[] };

/** A line for each member. */
export function truthText({ width, height, camera, members }: Truth, day: number): string {
  const rows = members.flatMap((member) => (member.bounds ? [JSON.stringify(rowOf(member))] : []));
  const rounded = Object.fromEntries(Object.entries(camera).map(([name, value]) => [name, shortened(value)]));
  const head = JSON.stringify({ width, height, day, camera: rounded });
  return `${head.slice(0, -1)},"members":[\n${rows.join(',\n')}\n]}\n`;
}

function rowOf({ mark, stage, pixels, ofWhole, ofPicture, bounds, outline }: Shown): Row {
  return [mark, stage, pixels, perMille(ofWhole), perMille(ofPicture), bounds ?? [], outline.map(Math.round)];
}

/** Of a text that `truthText` has written. */
export function readTruth(text: string): Kept {
  const { members, ...head } = JSON.parse(text) as TruthFile;
  return {
    ...head,
    members: members.map(([mark, stage, pixels, ofWhole, ofPicture, bounds, outline]) => {
      return { mark, stage, pixels, ofWhole: ofWhole / 1000, ofPicture: ofPicture / 1000, bounds, outline };
    }),
  };
}

const perMille = (share: number) => Math.round(share * 1000);
const shortened = (value: number | readonly number[]) =>
  typeof value === 'number' ? digits(value) : value.map(digits);
const digits = (value: number) => Math.round(value * 1e5) / 1e5;
