export const ledger = {
  title: 'Ledger',
  lead: 'All that was ever said of this house, in order. Nothing here is altered or removed; each entry is chained to all that stand before it.',
  head_one: 'Tree head over {{count, number}} entry',
  head_other: 'Tree head over {{count, number}} entries',
  headHint: 'Write it down elsewhere, e.g. in the site diary: whoever changes the past changes this value.',
  archive: {
    title: 'Archive of the house',
    lead: 'One file with the ledger, all originals, and a page that opens without a server. It can be checked and restored anywhere.',
    size_one:
      'About {{bytes}} of ledger and {{count, number}} original; the pages to read and check it add half a megabyte and more.',
    size_other:
      'About {{bytes}} of ledger and {{count, number}} originals; the pages to read and check it add half a megabyte and more.',
    download: 'Download the archive',
    check: 'Check an archive',
    caution:
      'The originals tell all that the cameras wrote, positions and serial numbers too. Hand the archive only to whoever may have all of it.',
  },
  stamp: {
    last_one: 'Its state after {{count, number}} entry was stamped by {{by}} on {{when}}.',
    last_other: 'Its state after {{count, number}} entries was stamped by {{by}} on {{when}}.',
    none: 'No time stamp yet. One is asked for once a day.',
    hint: 'A time stamp (RFC 3161) is the word of an outsider that this value existed then. It stands in the ledger and can be checked without this server.',
    trouble: 'The last request, {{when}}, brought no stamp: {{reason}} It is made again every hour.',
    troubleOf: {
      silent: 'the service did not answer.',
      rejected: 'the service refused it.',
      unreadable: 'the answer could not be read.',
      'another-head': 'the answer stamps something else.',
      'another-request': 'the answer belongs to another request.',
      'bad-signature': 'the signature is wrong.',
      untrusted: 'the certificate of the service leads to no root that is trusted here.',
    },
  },
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
  theProgram: 'whoever runs the program',
  noDay: 'no day yet',
  firstDay: 'first day on site {{day}}',
  noFirstDay: 'no first day on site',
  site: 'position {{where}}',
  noSite: 'no position',
  noKind: 'kind not given',
  reason: '{{sentence}} Reason: {{reason}}',
  say: {
    house: {
      created: 'Opened the record of the house “{{name}}”: time zone {{zone}}; {{day}}; {{where}}.',
      changed: 'Changed the house details: “{{name}}”, time zone {{zone}}; {{day}}; {{where}}.',
    },
    grid: { stated: 'Stated the grid: lines {{first}} and {{second}}, levels {{levels}}.' },
    requirements: {
      stated_one: 'Stated what coverings need on record: {{count}} row of its own.',
      stated_other: 'Stated what coverings need on record: {{count}} rows of its own.',
    },
    head: {
      stamped_one: 'The tree head over {{count, number}} entry got a time stamp of {{by}}: {{when}}.',
      stamped_other: 'The tree head over {{count, number}} entries got a time stamp of {{by}}: {{when}}.',
    },
    role: {
      granted: 'Gave {{person}} the role of {{role}}.',
      withdrawn: 'Took back the role of {{person}}.',
    },
    guest: {
      admitted: 'Made a guest link to {{what}} for {{label}}, until {{when}}.',
      ended: 'Ended a guest link.',
    },
    password: {
      'link-made': 'Made a link by which {{person}} can set a new password, until {{when}}.',
      renewed: 'The password of {{person}} was set anew with a link made by {{by}}.',
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
      inZone: 'what lies in its zone',
      withZone: '{{listed}} and what lies in its zone',
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
    term: {
      entered: 'Entered the kind {{name}}; stages: {{track}}.',
      renamed: 'Changed the kind {{was}} for this house: {{name}}; stages: {{track}}.',
      removed: 'Removed the crew’s own word {{name}}.',
    },
    note: { written: 'Wrote the note of {{day}}.' },
  },
} as const;
