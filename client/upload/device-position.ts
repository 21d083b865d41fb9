import type { DevicePosition } from '#domain/contract/place';

export const DEVICE_WAIT_S = 20;
export type DeviceTrouble = 'needsHttps' | 'unsupported' | 'denied' | 'unavailable' | 'timeout';

export class DevicePositionError extends Error {
  override readonly name = 'DevicePositionError';
  constructor(readonly trouble: DeviceTrouble) {
    super(trouble);
  }
}

/** Why this page can never learn where the device is, or null where it may ask. */
export function hopeless(): DeviceTrouble | null {
  if (!window.isSecureContext) return 'needsHttps';
  return 'geolocation' in navigator ? null : 'unsupported';
}

/** Asks the browser, which asks its person. Throws DevicePositionError. */
export function readDevicePosition(): Promise<DevicePosition> {
  const options = { enableHighAccuracy: true, timeout: DEVICE_WAIT_S * 1000, maximumAge: 0 };
  return new Promise((resolve, reject) => {
    navigator.geolocation.getCurrentPosition(
      ({ coords, timestamp }) =>
        resolve({
          lat: coords.latitude,
          lon: coords.longitude,
          errorM: coords.accuracy,
          measuredAt: new Date(timestamp).toISOString(),
        }),
      ({ code }) => reject(new DevicePositionError(troubleOf(code))),
      options,
    );
  });
}

/** Codes of W3C Geolocation: 1 denied, 2 unavailable, 3 timeout. */
function troubleOf(code: number): DeviceTrouble {
  return code === 1 ? 'denied' : code === 3 ? 'timeout' : 'unavailable';
}
