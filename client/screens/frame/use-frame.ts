import { useMemo } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { frameModel } from './frame-model.ts';

export function useFrame(house: string) {
  const query = useQuery({
    queryKey: keys.frame(house),
    queryFn: ({ signal }) => call('readFrame', { params: { house }, signal }),
  });
  const model = useMemo(() => (query.data ? frameModel(query.data) : null), [query.data]);
  return { query, model };
}
