import { WRONG_SENTENCES } from '#domain/verify/wrong-sentences';

export const check = {
  title: 'Check an archive',
  lead: 'Choose the archive of a house, or the folder into which it was unpacked. It is read on this device only; nothing of it is sent anywhere.',
  guide: {
    title: 'Check a release sheet',
    lead: 'You opened the code on a release sheet. The sheet says that a covering was released: that it may close, by whom, and on which records. Here you can check whether it agrees with the record that it comes from.',
    alone: 'With the sheet alone',
    compare:
      'These three come from the code. They stand on the sheet under the same names. Compare them character by character.',
    differ:
      'Does one of them differ? Then code and sheet do not belong together. Do not rely on the sheet, and ask the keeper of the record.',
    agree:
      'Do all three agree? Then code and sheet belong together, and no more is shown: whoever makes up a sheet can make up its code, too. Whether the record says what the sheet says is told by the archive of the house only.',
    number: 'Release number',
    entry: 'Ledger entry',
    head: 'Tree head after it',
    entryNo: 'No. {{number}}',
    record: 'Against the record',
    ask: 'Ask the keeper of the record, whom the sheet names, for the archive of the house, a ZIP file; inspectors of the house can download it, too. The archive holds all photos of the house: they may rather check it while you look on.',
    choose:
      'Choose the archive below. The three values are held against it. For a large archive use a computer.',
    read: 'If nothing is wrong, open index.html in the archive, and compare the release there with the sheet: members, waivers, names. The three values vouch for the record, not for what is printed on paper.',
    account: 'With an account',
    toRelease: 'See this release as the server has it',
    notYours: 'Your account has no part in the house of this release, or this server does not have it.',
    signIn: 'Sign in to see the release',
    signInLead: 'Whoever has a role in the house can see the release on this server, without the archive.',
    told: 'Opening the address of the code told this server the three values. Of the archive that you choose, nothing is sent.',
  },
  zip: 'The archive',
  chooseZip: 'The archive (ZIP)',
  chooseFolder: 'Or the folder into which it was unpacked',
  drop: 'Either can also be dropped here.',
  checking: 'Checking',
  progress: '{{read}} of {{all}}',
  yes: 'Nothing is wrong with this archive.',
  no: 'Something is wrong with this archive. The first thing:',
  house: 'House',
  madeAt: 'Made',
  times: '{{local}}, {{zone}} ({{offset}}); {{utc}} UTC',
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
    title: 'Values noted elsewhere, to compare with',
    lead: 'As they stand on a release sheet, in the site diary or on the ledger’s screen.',
    size: 'Ledger entry: its number, or how many there are',
    head: 'Tree head after it',
    release: 'Release number, if there is one',
    unusable:
      'A tree head has 64 digits, 0 to 9 and a to f, and the number of the ledger entry belongs to it.',
    same_one: 'It is the archive that was noted: the tree head over its first entry is the same.',
    same_other:
      'It is the archive that was noted: the tree head over its first {{count, number}} entries is the same.',
    included: 'The release {{release}} lies under that head.',
    rests: 'The release {{release}} is in it and rests on that head; its own words stand behind it.',
    withdrawn: 'This release does not stand. {{who}} took it back on {{when}}: {{reason}}',
    program: 'The program itself',
  },
  place: {
    line: '{{file}}, line {{line, number}}',
    byte: '{{file}}, byte {{byte, number}}',
    lineAndByte: '{{file}}, line {{line, number}}, byte {{byte, number}}',
  },
  wrong: WRONG_SENTENCES,
} as const;
