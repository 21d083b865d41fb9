import { useMemo } from 'react';
import { useQuery } from '@tanstack/react-query';
import { frameModel } from './frame-model.ts';
import { frameQuery } from './frame-query.ts';

export function useFrame(house: string) {
  const query = useQuery(frameQuery(house));
  const model = useMemo(() => (query.data ? frameModel(query.data) : null), [query.data]);
  return { query, model };
}
