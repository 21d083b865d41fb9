export const hold = {
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
