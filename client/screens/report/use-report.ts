import { useQuery } from '@tanstack/react-query';
import { amendedQuery } from '../../api/amended-query.ts';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { amendReport } from './amend-report.ts';

export function useReport(house: string) {
  return useQuery(
    amendedQuery({
      house,
      queryKey: keys.report(house),
      readWhole: (signal) => call('closingReport', { params: { house }, signal }),
      readPart: (photo, signal) => call('reportOfPhoto', { params: { photo }, signal }),
      amend: amendReport,
    }),
  );
}
