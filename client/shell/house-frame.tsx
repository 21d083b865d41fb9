import { useQuery } from '@tanstack/react-query';
import { Outlet, useParams } from 'react-router';
import { ProblemError } from '../api/call.ts';
import { useHouseEvents } from '../api/use-house-events.ts';
import { QueryState } from '../parts/query-state.tsx';
import { Content } from './content.tsx';
import { HouseLexicon } from './house-lexicon.tsx';
import { HouseNav } from './house-nav.tsx';
import { UploadLine } from './upload-line.tsx';
import { NotFound } from './not-found.tsx';
import { HouseContext, plainHouseQuery } from './use-house.ts';

/** Everything inside one house: loads it, keeps it fresh, and shows the way between its parts. */
export function HouseFrame() {
  const { house = '' } = useParams();
  const query = useQuery(plainHouseQuery(house));
  if (query.error instanceof ProblemError && query.error.problem.code === 'not-found')
    return (
      <Content>
        <NotFound />
      </Content>
    );
  return (
    <>
      {query.data ? (
        <>
          <LiveHouse house={house} />
          <HouseNav house={house} />
          <UploadLine house={house} />
        </>
      ) : null}
      <Content>
        <QueryState query={query}>
          {(facts) => (
            <HouseContext value={facts}>
              <HouseLexicon house={house}>
                <Outlet />
              </HouseLexicon>
            </HouseContext>
          )}
        </QueryState>
      </Content>
    </>
  );
}

/** Mounted only once the house is known to be readable: a refused event stream would reconnect for ever. */
function LiveHouse({ house }: { house: string }) {
  useHouseEvents(house);
  return null;
}
