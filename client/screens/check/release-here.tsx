import { useQuery } from '@tanstack/react-query';
import { Link, useLocation } from 'react-router';
import { call } from '../../api/call.ts';
import { ProblemError } from '../../api/errors.ts';
import { keys } from '../../api/keys.ts';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';

/** The release itself, for those who have a role in its house; for others the way to sign in. */
export function ReleaseHere({ release }: { release: string }) {
  const { t } = useWords();
  const session = useSession();
  return (
    <section aria-labelledby="release-here">
      <h2 id="release-here">{t('check.guide.account')}</h2>
      {session.data?.account ? <ToRelease release={release} /> : <ToSignIn />}
      <p className="soft">{t('check.guide.told')}</p>
    </section>
  );
}

function ToRelease({ release }: { release: string }) {
  const { t } = useWords();
  const query = useQuery({
    queryKey: keys.releaseOfCode(release),
    queryFn: ({ signal }) => call('readRelease', { params: { release }, signal }),
    retry: false,
  });
  if (query.error instanceof ProblemError) return <p>{t('check.guide.notYours')}</p>;
  return (
    <QueryState query={query}>
      {({ house }) => (
        <p>
          <Link className="line-link" to={`/houses/${house.id}/releases/${release}`}>
            {t('check.guide.toRelease')}
          </Link>
        </p>
      )}
    </QueryState>
  );
}

function ToSignIn() {
  const { t } = useWords();
  const { pathname, search } = useLocation();
  return (
    <>
      <p>{t('check.guide.signInLead')}</p>
      <p>
        <Link className="line-link" to="/sign-in" state={{ from: pathname + search }}>
          {t('check.guide.signIn')}
        </Link>
      </p>
    </>
  );
}
