export const walls = {
  title: 'Published figures for an earthen wall',
  lead: 'What the schedule says of rails and lath in this wall, beside figures that have been published. It is information, never an approval.',
  none: {
    'no-grid': 'The house has no grid, so nobody knows what lies in this wall.',
    'zone-impossible':
      'The lines of this wall are not those of the grid any more. Correct the covering or the grid.',
  },
  table: 'Figures of {{name}}',
  columns: { rule: 'Figure', published: 'Published', schedule: 'Schedule', verdict: 'Compared' },
  rule: {
    'rail-thickness': 'Thickness of rails',
    'rail-width': 'Width of rails',
    'rail-spacing': 'Distance between rails',
    'rail-count': 'Rails in each bay',
    'carrier-size': 'Size of lath carriers',
    'lath-size': 'Width of lath',
    'lath-spacing': 'Distance between laths',
  },
  at: { least: 'at least {{value}}', most: 'at most {{value}}' },
  unit: { mm: '{{value}} mm', pieces: '{{value}}' },
  read: { quotation: '(from a quotation)', summary: '(from a summary)', memory: '(not confirmed)' },
  measured: { least: 'least {{value}}', most: 'most {{value}}' },
  nothing: 'not known',
  looked_one: '({{count}} member looked at)',
  looked_other: '({{count}} members looked at)',
  verdict: {
    'as published': 'as published',
    differs: 'differs from it',
    'cannot be told': 'cannot be told',
  },
  because: {
    'none-in-schedule': 'the schedule has none in this wall',
    'place-unknown': 'of one of them the schedule does not say where or how high it lies',
    'section-assumed': 'a section is not stated and was assumed',
    reading: 'within the limit between edges, beyond it from middle to middle; the text says which is meant',
  },
  differing: 'Differing:',
  more_one: 'and {{count}} other',
  more_other: 'and {{count}} others',
  stop: '.',
  comma: ', ',
  source: 'Source:',
  set: {
    'moc-1100-1981/2003': {
      source: 'Notification 1100 of the Ministry of Construction (Japan), 1 June 1981',
      edition:
        'as amended by Notification 1543 of the Ministry of Land, Infrastructure and Transport, 9 December 2003',
      unconfirmed:
        'The figures are taken from quotations and summaries of the notification: check them in the text that is in force before you use them. Since 1 April 2025 they are said to stand elsewhere under other numbers. The text also says whether a distance counts from middle to middle or between edges.',
      notLookedAt:
        'Not looked at, since no schedule tells: rails wedged at the posts and spliced only there; carriers let into posts, beams and sill and nailed to the rails; lath tied, with no marked gap to posts and beams; clay, straw and the thickness of the coats.',
    },
  },
  until: 'Stood like this until {{day}}.',
  caution:
    'Whoever is licensed has to check this against the codes in force where the house stands, the drawings and the specification. It comes from the schedule alone; nobody has measured the wall.',
} as const;
