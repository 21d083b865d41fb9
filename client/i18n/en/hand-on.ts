export const handOn = {
  title: 'Hand on',
  copy: 'Copy without position and serial number',
  copyWithPosition: 'Copy with the position',
  copyWithSerial: 'Copy with the serial number',
  copyWithBoth: 'Copy with position and serial number',
  position: 'with the position',
  serial: "with the camera's serial number",
  original: 'The original file, unchanged',
  caution:
    'The original holds whatever the camera wrote, which may be where it was taken and by which camera. Hand it on only to whoever may know that.',
} as const;
