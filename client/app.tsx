import { QueryClientProvider } from '@tanstack/react-query';
import { createBrowserRouter, type RouteObject } from 'react-router';
import { RouterProvider } from 'react-router/dom';
import { fetchEarly } from './api/fetch-early.ts';
import { withLaterWords } from './i18n/start.ts';
import { createQueryClient } from './api/query-client.ts';
import { Broken } from './shell/broken.tsx';
import { Frame } from './shell/frame.tsx';
import { HouseFrame } from './shell/house-frame.tsx';
import { fetchWhenIdle } from './shell/fetch-when-idle.ts';
import { NotFound } from './shell/not-found.tsx';
import { Protected } from './shell/protected.tsx';
import { Spinner } from './parts/spinner.tsx';

/** Forms of the record, for whoever may change it. */
const forms: RouteObject[] = [
  {
    path: 'grid',
    lazy: async () => ({ Component: (await import('./screens/grid/grid-screen.tsx')).GridScreen }),
  },
  {
    path: 'lexicon/new',
    lazy: async () => ({
      Component: (await import('./screens/lexicon/term-form-screen.tsx')).TermFormScreen,
    }),
  },
  {
    path: 'lexicon/:kind/change',
    lazy: async () => ({
      Component: (await import('./screens/lexicon/term-form-screen.tsx')).TermFormScreen,
    }),
  },
  {
    path: 'schedule',
    lazy: async () => ({
      Component: (await import('./screens/schedule/schedule-screen.tsx')).ScheduleScreen,
    }),
  },
  {
    path: 'coverings/new',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/coverings/covering-form-screen.tsx')))
        .CoveringFormScreen,
    }),
  },
  {
    path: 'protection/new',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/protection/protection-form-screen.tsx')))
        .ProtectionFormScreen,
    }),
  },
  {
    path: 'protection/:protection',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/protection/protection-form-screen.tsx')))
        .ProtectionFormScreen,
    }),
  },
];

const houseScreens: RouteObject[] = [
  {
    index: true,
    lazy: async () => ({ Component: (await import('./screens/days/journal-screen.tsx')).JournalScreen }),
  },
  {
    path: 'days/:date',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/days/day-screen.tsx'))).DayScreen,
    }),
  },
  {
    path: 'photos',
    lazy: async () => ({ Component: (await import('./screens/photos/photos-screen.tsx')).PhotosScreen }),
  },
  {
    path: 'photos/:photo',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/bench/bench-screen.tsx'))).BenchScreen,
    }),
  },
  {
    path: 'plan',
    lazy: async () => ({ Component: (await import('./screens/place/plan-screen.tsx')).PlanScreen }),
  },
  {
    path: 'cameras',
    lazy: async () => ({ Component: (await import('./screens/cameras/cameras-screen.tsx')).CamerasScreen }),
  },
  {
    path: 'frame',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/frame/frame-screen.tsx'))).FrameScreen,
    }),
  },
  {
    path: 'members',
    lazy: async () => ({ Component: (await import('./screens/members/members-screen.tsx')).MembersScreen }),
  },
  {
    path: 'members/:mark',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/members/member-screen.tsx'))).MemberScreen,
    }),
  },
  {
    path: 'lexicon',
    lazy: async () => ({ Component: (await import('./screens/lexicon/lexicon-screen.tsx')).LexiconScreen }),
  },
  {
    path: 'lexicon/:kind',
    lazy: async () => ({ Component: (await import('./screens/lexicon/term-screen.tsx')).TermScreen }),
  },
  {
    path: 'coverings',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/coverings/coverings-screen.tsx'))).CoveringsScreen,
    }),
  },
  {
    path: 'coverings/:covering',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/coverings/covering-screen.tsx'))).CoveringScreen,
    }),
  },
  {
    path: 'coverings/:covering/review',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/review/review-screen.tsx'))).ReviewScreen,
    }),
  },
  {
    path: 'needs',
    lazy: async () => ({ Component: (await import('./screens/needs/needs-screen.tsx')).NeedsScreen }),
  },
  {
    path: 'report',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/report/report-screen.tsx'))).ReportScreen,
    }),
  },
  {
    path: 'releases/:release',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/releases/release-screen.tsx'))).ReleaseScreen,
    }),
  },
  {
    path: 'shots',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/shots/shots-screen.tsx'))).ShotsScreen,
    }),
  },
  {
    path: 'findings',
    lazy: async () => ({
      Component: (await import('./screens/findings/findings-screen.tsx')).FindingsScreen,
    }),
  },
  {
    path: 'people',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/people/people-screen.tsx'))).PeopleScreen,
    }),
  },
  {
    path: 'ledger',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/ledger/ledger-screen.tsx'))).LedgerScreen,
    }),
  },
  {
    path: 'settings',
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/houses/settings-screen.tsx'))).SettingsScreen,
    }),
  },
  {
    lazy: async () => ({
      Component: (await withLaterWords(import('./shell/for-recorders.tsx'))).ForRecorders,
    }),
    children: forms,
  },
  { path: '*', Component: NotFound },
];

const routes: RouteObject[] = [
  {
    path: '/guest/:secret',
    HydrateFallback: Spinner,
    ErrorBoundary: Broken,
    lazy: async () => ({
      Component: (await withLaterWords(import('./screens/guest/guest-screen.tsx'))).GuestScreen,
    }),
  },
  {
    path: '/',
    Component: Frame,
    ErrorBoundary: Broken,
    HydrateFallback: Spinner,
    children: [
      {
        path: 'sign-in',
        lazy: async () => ({
          Component: (await import('./screens/account/sign-in-screen.tsx')).SignInScreen,
        }),
      },
      {
        path: 'link/:link',
        lazy: async () => ({ Component: (await import('./screens/account/link-screen.tsx')).LinkScreen }),
      },
      {
        path: 'check',
        lazy: async () => ({
          Component: (await withLaterWords(import('./screens/check/check-screen.tsx'))).CheckScreen,
        }),
      },
      {
        Component: Protected,
        children: [
          {
            index: true,
            lazy: async () => ({
              Component: (await import('./screens/houses/houses-screen.tsx')).HousesScreen,
            }),
          },
          {
            path: 'account',
            lazy: async () => ({
              Component: (await withLaterWords(import('./screens/account/account-screen.tsx'))).AccountScreen,
            }),
          },
          {
            path: 'houses/:house',
            Component: HouseFrame,
            ErrorBoundary: Broken,
            // Within the house, so that the way to its other parts stays.
            children: [{ ErrorBoundary: Broken, children: houseScreens }],
          },
        ],
      },
      { path: '*', Component: NotFound },
    ],
  },
];

const queryClient = createQueryClient();
// A guest needs no other screen, and nobody to be signed in.
const isGuest = window.location.pathname.startsWith('/guest/');
if (!isGuest) void fetchEarly(queryClient, window.location.pathname);
const router = createBrowserRouter(routes);
if (!isGuest) fetchWhenIdle(routes);

export function App() {
  return (
    <QueryClientProvider client={queryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  );
}
