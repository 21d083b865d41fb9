export const ledger = {
  title: 'Ledger',
  lead: 'All that was ever said of this house, in order. Nothing here is altered or removed; each entry is chained to all that stand before it.',
  head_one: 'Tree head over {{count, number}} entry',
  head_other: 'Tree head over {{count, number}} entries',
  headHint: 'Write it down elsewhere, e.g. in the site diary: whoever changes the past changes this value.',
  list: 'Entries, the newest first',
  entry: 'Entry {{number, number}}',
  content: 'Content and hashes',
  kind: 'Kind',
  version: 'version {{version}}',
  leaf: 'Leaf hash',
  headAfter: 'Tree head after it',
  payload: 'Content',
  older: 'Show older entries',
  none: 'No entry yet',
  unknown: 'Said something for which this version of the program has no words ({{kind}}).',
  aCovering: 'a covering',
  noDay: 'no day yet',
  noKind: 'kind not given',
  reason: '{{sentence}} Reason: {{reason}}',
  say: {
    house: {
      created: 'Opened the record of the house “{{name}}”.',
      changed: 'Changed the house details: “{{name}}”, time zone {{zone}}.',
    },
    role: {
      granted: 'Gave {{person}} the role of {{role}}.',
      withdrawn: 'Took back the role of {{person}}.',
    },
    schedule: {
      imported:
        'Imported the schedule {{file}}: {{added}} added, {{changed}} changed, {{retired}} retired; rows left out: {{badRows}}.',
    },
    member: {
      entered: 'Entered the member {{mark}} ({{kind}}).',
      retired: 'Retired the member {{mark}}.',
      removed: 'Removed the member {{mark}}, to which nothing referred.',
    },
    photo: {
      added: 'Added the photo {{file}}.',
      dated: 'Dated a photo by hand: {{when}}, {{span}}.',
      'dating-withdrawn': 'Withdrew the date of a photo that was said by hand.',
    },
    clock: {
      marked: 'Made a clock mark for {{camera}}: the clock showed {{clock}}, the true time was {{when}}.',
      withdrawn: 'Withdrew a clock mark of {{camera}}.',
    },
    tag: {
      placed: 'Tagged {{mark}} on a photo: {{stage}}.',
      superseded: 'Replaced a tag of {{was}}; it now says {{mark}}: {{stage}}.',
      withdrawn: 'Withdrew a tag of {{mark}}.',
    },
    covering: {
      planned: 'Planned the covering “{{name}}” ({{kind}}) for {{day}}; it hides {{hidden}}.',
      changed: 'Changed the covering “{{name}}” ({{kind}}): for {{day}}, hides {{hidden}}.',
      closed: 'Said that “{{name}}” closed on {{when}}.',
      reopened: 'Took back the closing of “{{name}}”.',
    },
    findings: {
      accepted_one: 'Accepted a finding: {{what}}.',
      accepted_other: 'Accepted {{count, number}} findings: {{what}}.',
    },
    finding: { reopened: 'Took back that this was accepted: {{what}}.' },
    note: { written: 'Wrote the note of {{day}}.' },
  },
} as const;
