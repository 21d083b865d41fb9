import { Navigate, Outlet, useLocation } from 'react-router';
import { useSession } from '../api/use-session.ts';
import { QueryState } from '../parts/query-state.tsx';

/** Screens that need an account; whoever is not signed in comes back here afterwards. */
export function Protected() {
  const session = useSession();
  const { pathname, search } = useLocation();
  return (
    <QueryState query={session}>
      {({ account }) =>
        account ? (
          <Outlet />
        ) : (
          <Navigate to="/sign-in" replace state={pathname === '/' ? null : { from: pathname + search }} />
        )
      }
    </QueryState>
  );
}
