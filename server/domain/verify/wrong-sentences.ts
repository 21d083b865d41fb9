/** What can be wrong with an archive, in one sentence each; where it is stands before it. */
export const WRONG_SENTENCES = {
  'not-an-archive': 'This is no archive of a house, or it was cut off: {{reason}}.',
  'zip-empty': 'This file is empty: it has 0 bytes.',
  'zip-end':
    'This file has {{bytes}} bytes, and its end with the list of its files is missing: it was cut off, or it is no ZIP.',
  'file-missing': 'This file is missing.',
  'file-extra': 'This file does not belong to the archive.',
  'file-twice': 'There are two files of this name.',
  'file-unreadable': 'This file cannot be read, so the archive is damaged or cut off: {{reason}}.',
  'not-utf8': 'This is not text in UTF-8.',
  'not-json': 'This is not JSON.',
  'not-canonical': 'This is not the one form that canonical JSON (RFC 8785) allows.',
  'manifest-form': 'There is no usable “{{field}}” in it.',
  'manifest-newer':
    'It says “{{field}}”: {{found}}, which this program does not know. Check it with a newer one.',
  'manifest-checksum': 'Its checksum does not fit: this file was altered.',
  'manifest-house': 'It speaks of the house {{found}}, and the ledger of {{expected}}.',
  'manifest-size': 'It speaks of {{found}} entries, and the ledger has {{expected}}.',
  'manifest-head': 'It says that the tree head is {{found}}; from the ledger follows {{expected}}.',
  'manifest-original': 'What it says of the original {{sha256}} does not follow from the ledger.',
  'line-form': 'This line is not an entry with its leaf hash and its tree head.',
  'line-too-long': 'This line is longer than an entry can be.',
  'line-cut': 'The last line has no end: the file was cut off or altered.',
  'entry-form': 'There is no usable “{{field}}” in this entry.',
  'entry-place': 'This entry has the number {{found}}, and {{expected}} should stand here.',
  'entry-house': 'This entry belongs to the house {{found}}, and the first one to {{expected}}.',
  'entry-kind':
    'It says “{{kind}}” in version {{version}}, which this program does not know. Check it with a newer one.',
  'entry-leaf':
    'The line says that the entry’s hash is {{found}}; it is {{expected}}. One of them was altered.',
  'entry-head':
    'The line says that the tree head after this entry is {{found}}; it is {{expected}}. This or an earlier line was altered.',
  'release-covering': 'It releases the covering {{covering}}, which nobody had planned before.',
  'release-unknown': 'It takes back the release {{release}}, which nobody had given before.',
  'release-size': 'The release rests on {{found}} entries, and only {{expected}} stood before it.',
  'release-head':
    'The release rests on the tree head {{found}}; over these {{size}} entries it is {{expected}}.',
  'release-not-included': 'The release is not proved to lie under the last tree head.',
  'release-inconsistent':
    'The tree head that the release rests on is not proved to be an earlier state of this ledger.',
  'release-tag': 'The release rests on the tag {{tag}}, which nobody had placed before it.',
  'closing-release':
    'It closes a covering under the release {{release}}, which nobody had given for that covering before.',
  'stamp-head':
    'The stamp is for the tree head {{found}} over {{size}} entries; in this ledger it is {{expected}}.',
  'table-hash': 'It says that the hash of {{file}} is {{expected}}; it is {{found}}.',
  'table-row': 'Row {{row}} is not what follows from the ledger.',
  'page-hash': 'Its hash is {{found}}, and the manifest says {{expected}}. It was altered.',
  'original-length': 'It has {{found}} bytes, and the ledger says {{expected}}. It was altered or cut off.',
  'original-hash': 'Its hash is {{found}}, and the ledger says {{expected}}. It was altered.',
  'paper-size': 'The paper speaks of {{found}} entries, and this ledger has only {{expected}}.',
  'paper-head':
    'The paper says that the tree head over {{size}} entries is {{found}}; in this archive it is {{expected}}. The past was changed, or the paper belongs to another house.',
  'paper-release': 'The release {{release}} that the paper speaks of is not in this archive.',
} as const;

export type WrongCode = keyof typeof WRONG_SENTENCES;
