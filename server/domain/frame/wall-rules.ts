/** Where a published figure was read: in a quotation of the text, in a summary, or nowhere but from memory. */
export type ReadIn = 'quotation' | 'summary' | 'memory';

export const WALL_RULES = [
  'rail-thickness',
  'rail-width',
  'rail-spacing',
  'rail-count',
  'carrier-size',
  'lath-size',
  'lath-spacing',
] as const;
export type WallRule = (typeof WALL_RULES)[number];

export interface WallFigure {
  readonly at: 'least' | 'most';
  readonly limit: number;
  readonly unit: 'mm' | 'pieces';
  readonly read: ReadIn;
}

/** An edition of the published figures for an earthen wall. Add the next one beside it; never alter one. */
export interface WallRuleSet {
  readonly id: string;
  readonly source: string;
  readonly edition: string;
  readonly from: string;
  /** The first day on which it no longer stands as it is quoted; null: as far as known it still does. */
  readonly until: string | null;
  readonly unconfirmed: readonly string[];
  readonly figures: Readonly<Record<WallRule, WallFigure>>;
  /** Of a carrier in the round; `carrier-size` is that of a split one. */
  readonly roundCarrier: WallFigure;
  /** What is published as well and no schedule tells. */
  readonly notLookedAt: readonly string[];
}

export const WALL_RULE_SETS = [
  {
    id: 'moc-1100-1981/2003',
    source: 'Notification 1100 of the Ministry of Construction (Japan), 1 June 1981',
    edition:
      'as amended by Notification 1543 of the Ministry of Land, Infrastructure and Transport, 9 December 2003',
    from: '2003-12-09',
    until: '2025-04-01',
    unconfirmed: [
      'The text itself was not seen: figures are from quotations and summaries of it.',
      'Since 1 April 2025 the figures stand elsewhere under other numbers (from memory).',
      'Whether a spacing is counted from middle to middle or between edges was not seen.',
    ],
    figures: {
      'rail-thickness': { at: 'least', limit: 15, unit: 'mm', read: 'summary' },
      'rail-width': { at: 'least', limit: 100, unit: 'mm', read: 'summary' },
      'rail-spacing': { at: 'most', limit: 910, unit: 'mm', read: 'summary' },
      'rail-count': { at: 'least', limit: 3, unit: 'pieces', read: 'summary' },
      'carrier-size': { at: 'least', limit: 20, unit: 'mm', read: 'quotation' },
      'lath-size': { at: 'least', limit: 20, unit: 'mm', read: 'quotation' },
      'lath-spacing': { at: 'most', limit: 45, unit: 'mm', read: 'quotation' },
    },
    roundCarrier: { at: 'least', limit: 12, unit: 'mm', read: 'quotation' },
    notLookedAt: [
      'rails wedged at the posts and spliced only there',
      'carriers let into posts, beams and sill, and nailed to the rails',
      'lath tied, with no marked gap to posts and beams',
      'clay, straw and the thickness of the coats',
    ],
  },
] as const satisfies readonly WallRuleSet[];

/** To be shown with every result. */
export const WALL_CHECK_CAUTION =
  'Figures as published, to be checked against the codes in force where the house stands and by who is licensed ' +
  'to; information from the schedule alone, and never an approval.';
