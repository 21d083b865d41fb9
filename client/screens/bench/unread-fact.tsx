import type { Complaint } from '#domain/contract/complaints';
import type { Readings } from '#domain/contract/shapes';
import { useWords } from '../../i18n/use-words.ts';
import { complaintSentence, rivalSentence } from './unread-words.ts';

/** Said where the position stands. */
const ELSEWHERE: Complaint = 'datum-tokyo';
/** Stands above the values that it is about. */
const DIFFER: Complaint = 'readers-differ';

/** What the file holds and could not be read, or was read in two ways. Nothing where all was read. */
export function UnreadFact({ complaints, rivals }: Pick<Readings, 'complaints' | 'rivals'>) {
  const { t } = useWords();
  const said = complaints.filter((code) => code !== ELSEWHERE && (code !== DIFFER || rivals.length === 0));
  if (said.length + rivals.length === 0) return null;
  return (
    <>
      <dt>{t('unread.title')}</dt>
      <dd>
        <ul className="unread-list">
          {said.map((code) => (
            <li key={code}>{complaintSentence(t, code)}</li>
          ))}
          {rivals.length > 0 ? (
            <li>
              {complaintSentence(t, DIFFER)}
              <ul className="unread-list">
                {rivals.map((rival) => (
                  <li key={rival.field}>{rivalSentence(t, rival)}</li>
                ))}
              </ul>
            </li>
          ) : null}
        </ul>
        <p className="soft">{t('unread.kept')}</p>
      </dd>
    </>
  );
}
