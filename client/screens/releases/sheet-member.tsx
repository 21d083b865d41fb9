import { Link } from 'react-router';
import type { SheetMember, SheetRecord } from '#domain/record/sheet/sheet';
import { useHouse } from '../../shell/use-house.ts';
import { MemberLink } from './member-link.tsx';

/** One member as it was when the covering was released, with its records. */
export function SheetMemberItem({ member, isWaived }: { member: SheetMember; isWaived: boolean }) {
  const { mark, kind, state, text, records } = member;
  return (
    <li className="release-member">
      <h3>
        <MemberLink mark={mark} /> {kind} <span className={isWaived ? 'act-text' : 'soft'}>{state}</span>
      </h3>
      <p>{text}</p>
      {records.length === 0 ? null : (
        <ul className="plain-list release-records">
          {records.map((record) => (
            <li key={record.tag}>
              <RecordCard record={record} />
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

function RecordCard({ record: { tag, photo, crop, shows, isPictured, lines } }: { record: SheetRecord }) {
  const { id: house } = useHouse();
  const [file, ...rest] = lines;
  return (
    <div className="release-record">
      {isPictured ? <img src={crop} alt={shows} loading="lazy" decoding="async" /> : null}
      <ul className="plain-list">
        <li>
          <Link className="release-file" to={`/houses/${house}/photos/${photo}?tag=${tag}`}>
            {file}
          </Link>
        </li>
        {rest.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
