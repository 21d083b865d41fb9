import { WRONG_SENTENCES } from '#domain/verify/wrong-sentences';

export const check = {
  title: 'Check an archive',
  lead: 'Choose the archive of a house, or the folder into which it was unpacked. It is read on this device only; nothing of it is sent anywhere.',
  chooseZip: 'The archive (ZIP)',
  chooseFolder: 'Or the folder into which it was unpacked',
  drop: 'Either can also be dropped here.',
  checking: 'Checking',
  progress: '{{read}} of {{all}}',
  yes: 'Nothing is wrong with this archive.',
  no: 'Something is wrong with this archive. The first thing:',
  house: 'House',
  madeAt: 'Made',
  entries: 'Entries of the ledger',
  originals: 'Originals',
  originalsOf: '{{count, number}}, {{bytes}}',
  records: 'Records that stand',
  releases: 'Releases',
  head: 'Tree head',
  count: '{{count, number}}',
  back_one:
    'The time of {{count, number}} entry lies before that of the one before it (line {{line, number}}): a clock was set back, or two servers had two clocks.',
  back_other:
    'The times of {{count, number}} entries lie before those of the ones before them, first on line {{line, number}}: a clock was set back, or two servers had two clocks.',
  compare:
    'An archive that was written anew from the first entry on agrees with itself, too. Compare the tree head with one that was noted elsewhere, on a release sheet or in the site diary.',
  paper: {
    title: 'Compare with a tree head noted elsewhere',
    lead: 'As it stands on a release sheet, in the site diary or on the ledger’s screen.',
    size: 'Number of entries',
    head: 'Tree head',
    release: 'Release, if one is named',
    unusable: 'A tree head has 64 digits, 0 to 9 and a to f, and the number of entries belongs to it.',
    same_one: 'It is the archive that was noted: the tree head over its first entry is the same.',
    same_other:
      'It is the archive that was noted: the tree head over its first {{count, number}} entries is the same.',
    included: 'The release {{release}} lies under that head.',
    rests: 'The release {{release}} is in it and rests on that head; its own words stand behind it.',
  },
  place: {
    line: '{{file}}, line {{line, number}}',
    byte: '{{file}}, byte {{byte, number}}',
    lineAndByte: '{{file}}, line {{line, number}}, byte {{byte, number}}',
  },
  wrong: WRONG_SENTENCES,
} as const;
