export const hold = {
  title: 'Inspection before it closes',
  state: {
    planned: 'not inspected yet',
    ready: 'ready for inspection',
    refused: 'refused',
    released: 'released',
    'under-release': 'closed under release',
    'without-release': 'closed without release',
  },
  said: {
    planned: 'Nobody has said yet that it is ready for inspection.',
    ready: 'Said to be ready for inspection on {{when}}, by {{who}}.',
    refused: 'Refused on {{when}} by {{who}}: it may not close yet.',
    released: 'Released on {{when}} by {{who}}: it may close.',
  },
  lacking_one: '{{count, number}} member is missing something:',
  lacking_other: '{{count, number}} members are missing something:',
  without: 'It closed without release: “{{reason}}”',
  unsaid: 'It closed without release, and nobody said why.',
  toRelease: 'To the release',
  toReview: 'Review it',
  toLook: 'Look at the review',
  ready: {
    open: 'Ready for inspection …',
    title: 'Is {{name}} ready for inspection?',
    text: 'An inspector then looks at each member that it hides, and at its record, and releases or refuses it.',
    gaps_one:
      '{{count, number}} member is without a record. The inspector can accept it by name with a reason, or refuse.',
    gaps_other:
      '{{count, number}} members are without a record. The inspector can accept each by name with a reason, or refuse.',
    note: 'Note to the inspector',
    submit: 'It is ready',
  },
  back: {
    open: 'Not ready after all …',
    title: 'Take back that {{name}} is ready?',
    text: 'Nobody can release or refuse it until it is said to be ready again. The ledger keeps both.',
    submit: 'Take it back',
  },
  say: {
    ready: 'Said that “{{name}}” is ready for inspection.',
    'ready-withdrawn': 'Took back that “{{name}}” is ready for inspection.',
    refused: 'Refused “{{name}}”: it may not close yet.',
    lacking: 'Refused “{{name}}”: it may not close yet. Missing: {{marks}}.',
    released: 'Released “{{name}}”: it may close. It rests on the first {{size, number}} entries.',
    waived_one:
      'Released “{{name}}”: it may close. It rests on the first {{size, number}} entries; {{count, number}} member was accepted without a record.',
    waived_other:
      'Released “{{name}}”: it may close. It rests on the first {{size, number}} entries; {{count, number}} members were accepted without a record.',
    'release-withdrawn': 'Took back the release of “{{name}}”.',
    disputed: 'Doubted a tag of {{mark}}.',
    closed: 'Said that “{{name}}” closed on {{when}}, under its release.',
    without: '{{sentence}} Without release: {{reason}}',
    note: '{{sentence}} Note: {{note}}',
    fourEyes: 'Stated that nobody may release what they alone recorded.',
    twoEyes: 'Stated that people may release what they alone recorded.',
  },
  close: {
    under: 'It closes under the release of {{when}} by {{who}}.',
    without:
      'No release stands for all that it hides. Work may go on; the record will say for good that it closed without release, and why.',
    reason: 'Why it closes without release',
    needReason: 'Say why it closes without release, or have it inspected first.',
  },
} as const;
