import type { Sheet } from '#domain/record/sheet/sheet';
import { CheckCode } from './check-code.tsx';
import { SheetFacts } from './sheet-facts.tsx';
import { SheetMemberItem } from './sheet-member.tsx';
import { MarkedLines, RefusedLines, SheetPartSection } from './sheet-part.tsx';

/** The sheet below its title, in the order of the PDF. */
export function SheetView({ sheet, check }: { sheet: Sheet; check: string }) {
  const { notice, facts, proof, caution, waived, refused, members, later } = sheet;
  const isWaived = new Set(waived.items.map(({ mark }) => mark));
  return (
    <div className="stack release">
      {notice === null ? null : <p className="act-text release-notice">{notice}</p>}
      <div className="release-head">
        <SheetFacts facts={facts} />
        <CheckCode address={check} />
      </div>
      <SheetFacts facts={[proof.number, proof.entry, proof.head]} />
      <p className="release-check">
        <span className="soft">{proof.check}</span> <a href={check}>{check}</a>
      </p>
      <p className="release-caution">{caution}</p>
      <SheetPartSection part={waived}>
        <MarkedLines items={waived.items} />
      </SheetPartSection>
      {refused === null ? null : (
        <SheetPartSection part={refused}>
          <RefusedLines items={refused.items} />
        </SheetPartSection>
      )}
      <SheetPartSection part={members}>
        <ul className="plain-list release-members">
          {members.items.map((member) => (
            <SheetMemberItem key={member.mark} member={member} isWaived={isWaived.has(member.mark)} />
          ))}
        </ul>
      </SheetPartSection>
      <SheetPartSection part={later} isLater>
        <SheetFacts facts={later.facts} />
        <MarkedLines items={later.items} />
      </SheetPartSection>
    </div>
  );
}
