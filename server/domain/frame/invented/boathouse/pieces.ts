import type { InventedMember } from '../invented-house.ts';
import { SECTIONS } from './measures.ts';

interface Lie {
  readonly from: string;
  readonly to?: string;
  readonly level: '1F' | '2F' | '軒';
  readonly base: number;
  /** Of what lies level there is none. */
  readonly top?: number;
  readonly place: string;
}

/** Makes members of one kind and section. */
export function piecesOf(kind: string, section: keyof typeof SECTIONS) {
  const [width, depth] = SECTIONS[section];
  return (mark: string, { from, to = '', level, base, top, place }: Lie): InventedMember => ({
    ...{ mark, kind, place },
    setOut: {
      from,
      to,
      level,
      base: Math.round(base),
      top: top === undefined ? null : Math.round(top),
      width,
      depth,
    },
  });
}
