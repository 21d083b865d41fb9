import { Outlet } from 'react-router';
import { NotYourRole } from './not-your-role.tsx';
import { useMay } from './use-house.ts';

/** Around the screens that are forms of the record: whoever may not say it is told so at once. */
export function ForRecorders() {
  return useMay('record') ? <Outlet /> : <NotYourRole />;
}
