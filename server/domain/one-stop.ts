/** A full stop at the end, but not of several, perhaps within a quotation mark or bracket. */
const ENDS_WITH_STOP = /(?<![.．。])[.．。](?<mark>[”"）)」』]?)$/u;
const ENDS_WITH_SIGN = /[!?！？]$/u;
/** A full stop of the sentence around, perhaps behind a quotation mark or bracket; no dot within a word. */
const STOP = String.raw`(?:。|\.(?=\s|$))`;
const STOP_NEXT = new RegExp(`^${STOP}`, 'u');
const STOP_SOON = new RegExp(`^[”"）)」』]?${STOP}`, 'u');

/**
 * People write their reasons as sentences and end a name with a dot, and the sentence around ends, too: of two
 * stops in a row one stays. `values` are the words of people in `text`.
 */
export function withOneStop(text: string, values: readonly string[]): string {
  return values.reduce(endOnce, text);
}

/** For what is not the end of a line. */
export function withoutStop(text: string): string {
  return text.replace(ENDS_WITH_STOP, '$<mark>');
}

function endOnce(text: string, value: string): string {
  const mark = ENDS_WITH_STOP.exec(value)?.groups?.['mark'];
  if (mark === undefined && !ENDS_WITH_SIGN.test(value)) return text;
  const follows = mark === '' ? STOP_SOON : STOP_NEXT;
  const [before = '', ...after] = text.split(value);
  const ends = after.map((rest) => {
    if (mark === undefined) return value + rest.replace(STOP_NEXT, '');
    return (follows.test(rest) ? withoutStop(value) : value) + rest;
  });
  return [before, ...ends].join('');
}
