import { Wrong } from './wrong.ts';

/** The list of its files stands at the end of a ZIP, in no fewer bytes than these (APPNOTE.TXT, 4.3.16). */
const END_BYTES = 22;

/** What is wrong with a file that is read as no ZIP; `reason`: in the words of whoever read it. */
export function wrongZip(bytes: number, hasEnd: boolean, reason: string): Wrong {
  if (bytes === 0) return new Wrong('zip-empty', { file: '' });
  return bytes < END_BYTES || !hasEnd
    ? new Wrong('zip-end', { file: '' }, { bytes })
    : new Wrong('not-an-archive', { file: '' }, { reason });
}
