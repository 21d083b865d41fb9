import type { ClosingReportView } from '#domain/contract/report-views';
import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';

type Evidence = ClosingReportView['days'][number]['coverings'][number]['lines'][number]['records'][number];

/** What is to be looked at about a tag, and what somebody has accepted of it; nothing where nothing is. */
export function RecordFindings({ findings }: Pick<Evidence, 'findings'>) {
  const { t, lang } = useWords();
  return (['open', 'accepted'] as const).map((state) => {
    const kinds = findings.filter(({ accepted }) => accepted === (state === 'accepted'));
    if (kinds.length === 0) return null;
    const names = [...new Set(kinds.map(({ kind }) => t(`findings.kind.${kind}`)))];
    return (
      <span key={state} className="report-findings">
        {t(`report.findings.${state}`, { what: formatList(names, lang) })}
      </span>
    );
  });
}
