/** Without macrons and apostrophes, as it is typed. */
export function bareRomaji(romaji: string): string {
  return romaji.normalize('NFD').replace(/[\u0304']/gu, '');
}
