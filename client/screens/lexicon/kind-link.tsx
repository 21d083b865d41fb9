import { Link } from 'react-router';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { KindName } from '../../parts/kind-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';

/** A kind's name that leads to its page; as written where the lexicon does not know it. */
export function KindLink({ kind }: { kind: string }) {
  const { id: house } = useHouse();
  const known = kindIn(useLexicon(), kind);
  if (!known) return <KindName kind={kind} />;
  return (
    <Link className="alone" to={`/houses/${house}/lexicon/${known.id}`}>
      <KindName kind={kind} />
    </Link>
  );
}
