export interface ToldZone {
  /** As people call it: Japan Standard Time. */
  readonly name: string;
  /** Before or after UTC, as +09:00; both where clocks change with the season. */
  readonly offset: string;
}

const LOCALES = { en: 'en-GB', ja: 'ja-JP' } as const;
const SEASONS = ['01-01', '07-01'] as const;

/** A zone (IANA) as it is told beside times of the year of `instant`; one that is not known is told as UTC. */
export function toldZone(zone: string, lang: 'en' | 'ja', instant: string): ToldZone {
  const days = SEASONS.map((day) => new Date(`${instant.slice(0, 4)}-${day}T00:00:00Z`));
  try {
    const offsets = days.map((at) => nameIn(zone, lang, 'longOffset', at).replace('GMT', '') || '+00:00');
    const name = nameIn(zone, lang, 'longGeneric', days[0]);
    return {
      name: /^(GMT|UTC)/u.test(name) ? zone : name,
      offset: [...new Set(offsets)].join(' / '),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { name: 'UTC', offset: '+00:00' };
  }
}

function nameIn(
  timeZone: string,
  lang: 'en' | 'ja',
  timeZoneName: 'longOffset' | 'longGeneric',
  at: Date | undefined,
): string {
  const parts = new Intl.DateTimeFormat(LOCALES[lang], { timeZone, timeZoneName }).formatToParts(at);
  return parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
}
