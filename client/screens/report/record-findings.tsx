import type { ClosingReportView } from '#domain/contract/report-views';
import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';

type Evidence = ClosingReportView['days'][number]['coverings'][number]['lines'][number]['records'][number];

/** What is to be looked at about a tag, and what somebody has accepted of it and why; nothing where nothing is. */
export function RecordFindings({ findings }: Pick<Evidence, 'findings'>) {
  const { t, lang } = useWords();
  const open = findings.flatMap(({ kind, accepted, doubt }) =>
    accepted || doubt ? [] : [t(`findings.kind.${kind}`)],
  );
  const doubts = findings.flatMap(({ doubt, accepted }) =>
    doubt
      ? [
          t(accepted ? 'report.findings.answered' : 'report.findings.doubted', {
            ...{ by: doubt.by, why: doubt.reason, reason: accepted?.reason },
            who: accepted?.by ?? t('common.nobody'),
          }),
        ]
      : [],
  );
  const answered = findings.flatMap(({ kind, accepted, doubt }) =>
    accepted && !doubt
      ? [
          t('report.findings.accepted', {
            ...{ what: t(`findings.kind.${kind}`), reason: accepted.reason },
            who: accepted.by ?? t('common.nobody'),
          }),
        ]
      : [],
  );
  const openText = t('report.findings.open', { what: formatList([...new Set(open)], lang) });
  return [...(open.length > 0 ? [openText] : []), ...new Set([...doubts, ...answered])].map((text) => (
    <span key={text} className="report-findings">
      {text}
    </span>
  ));
}
