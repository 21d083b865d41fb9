/**
 * All that reading a file can complain about. What ledgers hold stays text, so that a code which is given up
 * here is still read there.
 */
export const COMPLAINTS = [
  ...(['exif-unreadable', 'exif-partly-unreadable', 'readers-differ', 'readings-invalid'] as const),
  ...(['time-original-wrong-type', 'time-original-blank', 'time-original-invalid'] as const),
  ...(['time-from-xmp', 'only-digitized-time', 'only-modified-time', 'subsec-invalid'] as const),
  ...(['offset-wrong-type', 'offset-invalid', 'offset-in-thermal-record'] as const),
  ...(['gps-date-missing', 'gps-time-missing', 'gps-date-invalid', 'gps-time-invalid'] as const),
  ...(['position-wrong-type', 'position-not-a-number', 'position-out-of-range'] as const),
  ...(['position-hemisphere-missing', 'position-zero', 'datum-tokyo'] as const),
  ...(['make-wrong-type', 'make-cut', 'model-wrong-type', 'model-cut'] as const),
  ...(['serial-wrong-type', 'serial-cut', 'lens-wrong-type', 'lens-cut'] as const),
  ...(['position-error-wrong-type', 'position-error-not-a-number', 'position-error-out-of-range'] as const),
  ...(['altitude-wrong-type', 'altitude-not-a-number', 'altitude-out-of-range'] as const),
  ...(['heading-wrong-type', 'heading-not-a-number', 'heading-out-of-range'] as const),
  ...(['orientation-wrong-type', 'orientation-not-a-number', 'orientation-out-of-range'] as const),
  ...(['focal-length-wrong-type', 'focal-length-not-a-number', 'focal-length-out-of-range'] as const),
  ...([
    'focal-length-35-wrong-type',
    'focal-length-35-not-a-number',
    'focal-length-35-out-of-range',
  ] as const),
] as const;
export type Complaint = (typeof COMPLAINTS)[number];

/** Fields that are read as a name, and those that are read as a number. */
export type NameField = 'make' | 'model' | 'serial' | 'lens';
export type NumberField =
  'position-error' | 'altitude' | 'heading' | 'orientation' | 'focal-length' | 'focal-length-35';
