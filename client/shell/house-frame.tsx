import { useEffect, useRef } from 'react';
import { useQuery } from '@tanstack/react-query';
import { Outlet, useParams } from 'react-router';
import { ProblemError } from '../api/call.ts';
import { houseQuery } from '../api/house-query.ts';
import { useHouseEvents } from '../api/use-house-events.ts';
import { QueryState } from '../parts/query-state.tsx';
import { HouseNav } from './house-nav.tsx';
import { BELOW_MENU } from './focus-content.ts';
import { UploadLine } from './upload-line.tsx';
import { NotFound } from './not-found.tsx';
import { HouseContext } from './use-house.ts';

/** Everything inside one house: loads it, keeps it fresh, and shows the way between its parts. */
export function HouseFrame() {
  const { house = '' } = useParams();
  const query = useQuery(houseQuery(house));
  if (query.error instanceof ProblemError && query.error.problem.code === 'not-found') return <NotFound />;
  return (
    <QueryState query={query}>
      {(facts) => (
        <HouseContext value={facts}>
          <LiveHouse house={house} />
          <HouseNav house={house} />
          <UploadLine house={house} />
          <BelowMenu />
        </HouseContext>
      )}
    </QueryState>
  );
}

/** Where the focus goes after a change of screen: not before the menu, whose parts would have to be passed each time. */
function BelowMenu() {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The house came after the screen had changed.
    if (document.activeElement instanceof HTMLElement && document.activeElement.tagName === 'MAIN')
      box.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div ref={box} id={BELOW_MENU} tabIndex={-1}>
      <Outlet />
    </div>
  );
}

/** Mounted only once the house is known to be readable: a refused event stream would reconnect for ever. */
function LiveHouse({ house }: { house: string }) {
  useHouseEvents(house);
  return null;
}
