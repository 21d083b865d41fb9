/** Who carries what. Names of nobody: there is no such maker. */
export const DEVICES = {
  foreman: { make: 'Tani', model: "Foreman's phone", serial: 'T-0417', minutesSlow: 0 },
  carpenter: { make: 'Sawa', model: "Carpenter's phone", serial: 'S-1180', minutesSlow: 0 },
  // Nobody has set its clock since the battery was out.
  site: { make: 'Mine', model: 'Site camera', serial: 'M-0032', minutesSlow: 37 },
} as const;

export type DeviceName = keyof typeof DEVICES;

/** As each names its files. */
export const FILE_NAMES: Readonly<Record<DeviceName, (count: number) => string>> = {
  foreman: (count) => `${String(count).padStart(6, '0')}.jpg`,
  carpenter: (count) => `p${String(count).padStart(5, '0')}.jpg`,
  site: (count) => `${100 + Math.floor(count / 1000)}-${String(count % 1000).padStart(3, '0')}.jpg`,
};
