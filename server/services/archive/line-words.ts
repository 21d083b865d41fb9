import type { Line, Telling } from './telling.ts';

/** Whether a hidden member is on record; where it is not, why, or who accepted that and for which reason. */
export function lineWords(telling: Telling, line: Line): string {
  const { words, report } = telling;
  const { state, records, nearestMiss, waiver } = line;
  if (waiver && !waiver.takenBack) return acceptedWords(telling, waiver);
  if (state === 'on-record') return words.onRecord(report.state[state], records.length);
  if (state !== 'gap' && state !== 'lost') return report.state[state];
  const reasons = (nearestMiss?.reasons ?? []).map((reason) => report.miss[reason]);
  const why = [...reasons, ...(waiver ? [acceptedWords(telling, waiver)] : [])];
  return why.length === 0 ? report.state[state] : words.gap(report.state[state], why.join(report.and));
}

export function acceptedWords(
  { words, local }: Telling,
  { by, at, reason, takenBack }: NonNullable<Line['waiver']>,
): string {
  const accepted = words.accepted(by?.name ?? words.program, local(at), reason);
  if (!takenBack) return accepted;
  const back = [takenBack.by?.name ?? words.program, local(takenBack.at), takenBack.reason] as const;
  return words.acceptedBefore(accepted, ...back);
}
