import { foldTerm } from '../lexicon/track-of-kind.ts';
import { parseLength, type LengthUnit, type Mm } from './length.ts';
import type { Track } from './stage.ts';

/** One line of text: breaks, tabs and other control characters become single spaces. */
export function oneLine(cell: string): string {
  return wellFormed(cell)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim();
}

/** Text that may have several lines, with plain line breaks and no NUL. */
export function severalLines(cell: string): string {
  return wellFormed(cell).replace(/\r\n?/gu, '\n').replaceAll('\0', '').trim();
}

function wellFormed(text: string): string {
  return text.replace(/\p{Cs}/gu, '\uFFFD');
}

const TRACK_WORDS: Readonly<Record<Track, readonly string[]>> = {
  wall: ['wall', '壁', '壁内', '土壁'],
  timber: ['timber', 'frame', '軸組', '骨組', '木部'],
  floor: ['floor', '床', '床組'],
  lath: ['lath', '小舞', '木舞', '竹小舞', '下地'],
};

const trackByWord: ReadonlyMap<string, Track> = new Map(
  Object.entries(TRACK_WORDS).flatMap(([track, words]) =>
    words.map((word) => [foldTerm(word), track as Track] as const),
  ),
);

/** The track of an English or Japanese word, null for an empty cell, undefined for a word that is none. */
export function parseTrack(cell: string): Track | null | undefined {
  const word = foldTerm(cell);
  return word === '' ? null : trackByWord.get(word);
}

/** A spreadsheet's name of a column: 0 → A, 25 → Z, 26 → AA. */
export function columnLetters(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest > 0 ? columnLetters(rest - 1) : '') + String.fromCharCode(65 + (index % 26));
}

/** 120×240, 15 x 105 mm, 4寸×8寸, one length for a square; null where it is none. */
export function parseSection(cell: string, unit: LengthUnit): readonly [width: Mm, depth: Mm] | null {
  const sides = cell
    .normalize('NFKC')
    .replace(/角\s*$/u, '')
    .split(/[x×*✕╳]/iu)
    .map((side) => parseLength(side, unit));
  const [width, depth = width] = sides;
  return sides.length > 2 || !width || !depth ? null : [width, depth];
}
