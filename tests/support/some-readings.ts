import type { Capture } from '#domain/contract/capture';
import type { Readings } from '#domain/contract/shapes';

const NOTHING_READ: Readings = {
  wallTime: null,
  offsetMinutes: null,
  gpsTime: null,
  position: null,
  heading: null,
  orientation: null,
  make: null,
  model: null,
  serial: null,
  lens: null,
  focalLengthMm: null,
  focalLength35Mm: null,
  complaints: [],
  rivals: [],
};

export function someReadings(known: Partial<Readings>): Readings {
  return { ...NOTHING_READ, ...known };
}

export function assertDated(capture: Capture): Extract<Capture, { state: 'dated' }> {
  if (capture.state !== 'dated') throw new Error('The capture is undated.');
  return capture;
}
