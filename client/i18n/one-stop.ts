import type { PostProcessorModule } from 'i18next';

const ENDS_WITH_STOP = /(?<![.．。])[.．。]$/u;
const ENDS_WITH_SIGN = /[!?！？]$/u;
/** A full stop of the sentence around, perhaps behind a quotation mark or bracket; no dot within a word. */
const STOP = String.raw`(?:。|\.(?=\s|$))`;
const STOP_NEXT = new RegExp(`^${STOP}`, 'u');
const STOP_SOON = new RegExp(`^[”"）)」』]?${STOP}`, 'u');

interface Values {
  readonly replace?: Readonly<Record<string, unknown>>;
  readonly [name: string]: unknown;
}

/**
 * People write their reasons as sentences and end a name with a dot, and the sentence around ends, too: of two
 * stops in a row one stays.
 */
export const oneStop: PostProcessorModule = {
  type: 'postProcessor',
  name: 'one-stop',
  process: (text: string, _key, { replace, ...values }: Values) =>
    Object.values({ ...values, ...replace }).reduce<string>(
      (said, value) => (typeof value === 'string' ? endOnce(said, value) : said),
      text,
    ),
};

function endOnce(text: string, value: string): string {
  const isStopped = ENDS_WITH_STOP.test(value);
  if (!isStopped && !ENDS_WITH_SIGN.test(value)) return text;
  const [before = '', ...after] = text.split(value);
  const ends = after.map((rest) => {
    if (!isStopped) return value + rest.replace(STOP_NEXT, '');
    return (STOP_SOON.test(rest) ? value.slice(0, -1) : value) + rest;
  });
  return [before, ...ends].join('');
}
