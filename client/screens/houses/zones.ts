/** The zone of this browser: most often the site's. */
export function ownZone(): string | null {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || null;
}

/** All zones that this browser knows, and the one in use in case it is not among them. */
export function allZones(inUse: string | null): string[] {
  const zones = Intl.supportedValuesOf('timeZone');
  return inUse !== null && !zones.includes(inUse) ? [inUse, ...zones] : zones;
}

/** Those whose name holds all that was typed; blanks and underscores are the same. */
export function narrowZones(zones: readonly string[], typed: string): { id: string; label: string }[] {
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[_\s/]+/g, ' ')
      .trim();
  const words = plain(typed).split(' ');
  return zones
    .filter((zone) => words.every((word) => plain(zone).includes(word)))
    .map((zone) => ({ id: zone, label: zone }));
}
