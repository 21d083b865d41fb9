/** What could not be read from a photo's file. */
export const unread = {
  title: 'Not read',
  kept: 'Nothing was guessed instead; the original is kept as it came.',
  code: {
    'exif-unreadable': 'The file holds camera data, but none of it can be read.',
    'exif-partly-unreadable': 'Some of the camera data is damaged; what could be read stands here.',
    'readers-differ': 'Read twice, in two ways, the file gives different values:',
    'readings-invalid': 'The camera data contradicts itself so far that none of it was taken.',
    'time-original-blank': 'The file has a place for the time of capture, but it is empty.',
    'time-from-xmp':
      'The time of capture is not where cameras write it; it was taken from a note that a program added.',
    'only-digitized-time':
      'The file says only when the picture was stored, not when it was taken. It is not used.',
    'only-modified-time':
      'The file says only when it was last changed, not when the picture was taken. It is not used.',
    'subsec-invalid': 'The fraction of the second is no number and is left out.',
    'gps-date-missing': 'The satellite time has no date and is left out.',
    'gps-time-missing': 'The satellite date has no time of day and is left out.',
    'position-hemisphere-missing':
      'The position does not say north or south, or east or west, and is left out.',
    'position-zero':
      'The position is zero in both directions, as devices write it before they know where they are. It is left out.',
    'offset-in-thermal-record':
      'The time zone stands only in a record of the thermal camera, which is not read.',
    'datum-tokyo': 'The position is in the old Tokyo datum.',
  },
  what: {
    'time-original': 'The time of capture',
    offset: 'The difference of the clock from UTC',
    'gps-date': 'The satellite date',
    'gps-time': 'The satellite time',
    position: 'The position',
    'position-error': 'The error of the position',
    altitude: 'The altitude',
    heading: 'The direction',
    orientation: 'The mark for which side is up',
    make: 'The maker of the camera',
    model: 'The model of the camera',
    serial: 'The serial number of the camera',
    lens: 'The name of the lens',
    'focal-length': 'The focal length',
    'focal-length-35': 'The focal length for 35 mm film',
  },
  why: {
    'wrong-type': '{{what}} is written in a form that cannot be read.',
    cut: '{{what}} is very long; only its beginning is kept.',
    'not-a-number': '{{what}} is not a number and is left out.',
    'out-of-range': '{{what}} is a value that cannot be, and is left out.',
    invalid: '{{what}} cannot be right as it is written, and is left out.',
  },
  other: 'Something else in the camera data could not be read ({{code}}).',
  rival: '{{what}}: {{first}} or {{second}}. The first is used.',
} as const;
