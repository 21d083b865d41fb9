import type { Verdict } from '#domain/photo/legibility';
import type { Level } from './judge.ts';

export interface Figure extends Level {
  /** What bars say that were harmed in the same way. */
  readonly ground: Verdict;
  readonly contrast: { readonly large: number; readonly small: number };
  /** How many regions of real photos were judged how. */
  readonly judged: Readonly<Record<Verdict, number>>;
  /** Least, median and largest of the blur that was measured. */
  readonly measured: readonly number[];
}
