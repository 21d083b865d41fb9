import type { Statement } from '#domain/ledger/statements';
import type { LedgerEntryView } from '#domain/contract/views';

/** The screen that shows what an entry is about, or null where none does. */
export function statementTarget(
  house: string,
  entry: Pick<LedgerEntryView, 'kind' | 'payload'>,
): string | null {
  const { kind, payload } = entry as Statement;
  const base = `/houses/${house}`;
  switch (kind) {
    case 'photo.added':
    case 'photo.position-added':
    case 'photo.dated':
    case 'photo.dating-withdrawn':
    case 'clock.marked':
    case 'tag.placed':
    case 'tag.superseded':
    case 'tag.withdrawn':
    case 'tag.disputed':
      return `${base}/photos/${payload.photo}`;
    case 'member.entered':
    case 'member.retired':
      return `${base}/members/${encodeURIComponent(payload.mark)}`;
    case 'clock.withdrawn':
      return `${base}/cameras`;
    case 'term.entered':
      return `${base}/lexicon/${payload.term}`;
    case 'term.removed':
      return `${base}/lexicon`;
    case 'schedule.imported':
      return `${base}/members`;
    case 'covering.planned':
    case 'covering.changed':
    case 'covering.closed':
    case 'covering.reopened':
    case 'covering.ready':
    case 'covering.ready-withdrawn':
    case 'covering.refused':
      return `${base}/coverings/${payload.covering}`;
    case 'covering.released':
    case 'release.withdrawn':
      return `${base}/releases/${payload.release}`;
    case 'protection.laid':
    case 'protection.changed':
    case 'protection.lifted':
    case 'protection.lifting-withdrawn':
    case 'protection.withdrawn':
      return `${base}/coverings`;
    case 'grid.stated':
    case 'requirements.stated':
      return `${base}/grid`;
    case 'findings.accepted':
    case 'finding.reopened':
      return `${base}/findings`;
    case 'note.written':
      return `${base}/days/${payload.day}`;
    case 'guest.admitted':
    case 'guest.ended':
      return `${base}/people`;
    case 'house.created':
    case 'house.changed':
    case 'release-rule.stated':
    case 'head.stamped':
    case 'role.granted':
    case 'role.withdrawn':
    case 'password.link-made':
    case 'password.renewed':
    case 'member.removed':
    default:
      return null;
  }
}
